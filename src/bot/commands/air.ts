import { dayMarks, localDate } from '../../core/instant.js'
import { bondNumbers } from '../closing/bond-numbers.js'
import { type Done, type OnSite, told } from '../context.js'
import { alertNumbers } from '../decision/alert-numbers.js'
import { decideOnSite } from '../decision/decide-on-site.js'
import { logFacts } from '../decision/log-facts.js'
import { conditionNumbers } from '../decision/numbers.js'
import type { Said } from '../words/said.js'

/** Logs readings, decides lay and people. */
export async function air(said: Extract<Said, { command: 'air' }>, on: OnSite, at: number): Promise<Done> {
  await logFacts(on, said.reading, said.statement, at)
  const { memory, facts, told: decided } = await decideOnSite(on, 'lay')
  const { now, settings } = on.session
  const { midnight } = dayMarks(localDate(now, settings.zone), settings.zone)
  return told({
    command: 'air',
    ...decided,
    numbers: {
      ...conditionNumbers(facts, memory.kit, on.sheet),
      ...alertNumbers(on.alerts, { now, from: now, to: midnight }),
      ...bondNumbers(memory)
    }
  })
}
