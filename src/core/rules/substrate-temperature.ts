import { type Fixes, judge } from './judge.js'
import type { Rule } from './rule.js'

const fixes: Fixes = { read: 'read:substrate', low: 'wait:substrate', high: 'wait:substrate' }

export const substrateTemperature: Rule = {
  judges: { spray: 'conditions' },
  source: 'from memory',
  check(facts, sheet) {
    return judge(facts.substrateC, 'C', sheet.limits.substrate, fixes)
  }
}
