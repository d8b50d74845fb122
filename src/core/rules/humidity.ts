import { type Fixes, judge } from './judge.js'
import type { Rule } from './rule.js'

const fixes: Fixes = { read: 'read:humidity', low: 'wait:humidity', high: 'wait:humidity' }

export const humidity: Rule = {
  judges: { spray: 'conditions' },
  source: 'from memory',
  check(facts, sheet) {
    return judge(facts.rhPct, '%', sheet.limits.humidity, fixes)
  }
}
