import { type Fixes, judge } from './judge.js'
import type { Rule } from './rule.js'

const fixes: Fixes = { read: 'read:air', low: 'wait:air', high: 'wait:air' }

export const airTemperature: Rule = {
  judges: { spray: 'conditions', weld: 'conditions' },
  source: 'from memory',
  check(facts, sheet, activity) {
    return judge(facts.airC, 'C', activity === 'weld' ? sheet.limits.airWeld : sheet.limits.airSpray, fixes)
  }
}
