import { judge } from './judge.js'
import type { Rule } from './rule.js'

export const airTemperature: Rule = {
  judges: { spray: 'conditions', weld: 'conditions' },
  source: 'from memory',
  check(facts, sheet, activity) {
    const limit = activity === 'weld' ? sheet.limits.airWeld : sheet.limits.airSpray
    return judge(facts.airC, 'C', limit, { read: 'read:air', low: 'wait:air', high: 'wait:air' })
  }
}
