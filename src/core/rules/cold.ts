import { type Fixes, judge } from './judge.js'
import { airOrWind } from './reading-to-take.js'
import type { Rule } from './rule.js'

const fixes: Fixes = { read: 'read:air', low: 'wait:cold', high: 'wait:cold', caution: 'rest:warm' }

export const cold: Rule = {
  judges: { people: 'people' },
  source: 'ECCC wind chill bands',
  check(facts, sheet) {
    const verdict = judge(facts.feltC, 'C', sheet.limits.windChill, fixes)
    return verdict.outcome === 'unknown' ? { ...verdict, fix: airOrWind(facts) } : verdict
  }
}
