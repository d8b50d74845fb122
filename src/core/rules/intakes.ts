import { stated, unknown } from './judge.js'
import type { Rule } from './rule.js'

/** Air intakes, cars and people downwind of the spray. */
export const intakes: Rule = {
  judges: { spray: 'checklist' },
  source: 'common practice, no source',
  check(facts) {
    const fact = facts.intakes
    switch (fact.value) {
      case null:
        return unknown(fact, null, 'state:intakes')
      case 'open':
        return stated('no-go', false, fact, 'shut:intakes')
      case 'shut':
        return stated('caution', null, fact, null)
      case 'none':
        return stated('go', true, fact, null)
    }
  }
}
