import type { Fact } from '../fact.js'
import { type Fixes, judge, stated } from './judge.js'
import type { Rule } from './rule.js'

const fixes: Fixes = { read: 'wait:daylight', low: 'wait:daylight', high: 'wait:daylight' }

/** The sun is reckoned, not forecast: never unknown, no spread. */
export const daylight: Rule = {
  judges: { spray: 'conditions', lay: 'conditions', weld: 'conditions' },
  source: 'common practice, no source',
  check(facts, sheet) {
    const left: Fact = { value: facts.daylightMin, at: facts.at, origin: 'model', spread: 0, stale: false }
    if (!facts.sunUp) return stated('no-go', left.value, left, 'wait:daylight', 'min')
    // Up and not setting: all the daylight there is.
    if (left.value === null) return stated('go', null, left, null, 'min')
    return judge(left, 'min', sheet.limits.daylight, fixes)
  }
}
