import { stated, unknown } from './judge.js'
import type { Rule } from './rule.js'

export const rainNow: Rule = {
  judges: { spray: 'conditions', lay: 'conditions', weld: 'conditions' },
  source: 'common practice, no source',
  check(facts) {
    const fact = facts.rainFalling
    if (fact.value === null) return unknown(fact, null, 'state:rain')
    return stated(fact.value ? 'no-go' : 'go', fact.value, fact, 'wait:rain')
  }
}
