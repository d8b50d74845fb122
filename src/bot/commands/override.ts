import { localDate } from '../../core/instant.js'
import { bondNumbers } from '../closing/bond-numbers.js'
import { type Done, type OnSite, refuse, told } from '../context.js'
import { decideOnSite } from '../decision/decide-on-site.js'
import { conditionNumbers } from '../decision/numbers.js'
import type { Said } from '../words/said.js'

/** A supervisor goes ahead against a decision: an entry with a reason beside the decision, which stays what it is. */
export async function override(said: Extract<Said, { command: 'spray override' }>, on: OnSite, at: number): Promise<Done> {
  const { session } = on
  if (session.ask.role !== 'supervisor') return refuse('not-allowed', 'override', { who: 'supervisor' })
  const { memory, facts, decision, told: decided } = await decideOnSite(on, 'spray')
  const bonds = bondNumbers(memory)
  // Nobody goes ahead against what lets them go: a record would say that a rule was set aside.
  if (decided.outcome === 'go' && bonds.bondFailed === undefined) return refuse('wrong-state', 'override', { label: 'override', state: 'is-go' })
  await session.log(
    'override',
    `day:${localDate(at, session.settings.zone)}`,
    { activity: 'spray', decision, outcome: decided.outcome, reason: said.reason },
    at
  )
  return told({
    command: 'spray',
    ...decided,
    numbers: { ...conditionNumbers(facts, memory.kit, on.sheet), ...bonds, overridden: true, reason: said.reason }
  })
}
