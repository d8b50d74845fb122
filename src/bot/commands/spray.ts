import { bondNumbers } from '../closing/bond-numbers.js'
import { type Done, type OnSite, told } from '../context.js'
import { decideOnSite } from '../decision/decide-on-site.js'
import { logFacts, logKit } from '../decision/log-facts.js'
import { conditionNumbers } from '../decision/numbers.js'
import type { Said } from '../words/said.js'

/** Logs what was said, decides spray. */
export async function spray(said: Extract<Said, { command: 'spray' }>, on: OnSite, at: number): Promise<Done> {
  await logFacts(on, said.reading, said.statement, at)
  if (said.kit !== null) await logKit(on, said.kit, at)
  const { memory, facts, told: decided } = await decideOnSite(on, 'spray')
  return told({ command: 'spray', ...decided, numbers: { ...conditionNumbers(facts, memory.kit, on.sheet), ...bondNumbers(memory) } })
}
