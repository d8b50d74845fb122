import { type Fixes, judge, unknown } from './judge.js'
import type { Rule } from './rule.js'

const fixes: Fixes = { read: 'state:chance', low: 'wait:rain', high: 'wait:rain', caution: 'close:openings' }

/** Until everything open is closed up. It never stops welding: that is how a roof is closed. */
export const rainComing: Rule = {
  judges: { spray: 'conditions', lay: 'conditions' },
  source: 'from memory',
  check(facts, sheet) {
    const { rainChancePct, rainAmountMm } = facts
    if (rainChancePct.value !== null) return judge(rainChancePct, '%', sheet.limits.rainChance, fixes, 'all')
    if (rainAmountMm.value !== null) return judge(rainAmountMm, 'mm', sheet.limits.rainAmount, fixes, 'no-go')
    return unknown(rainChancePct.stale ? rainChancePct : rainAmountMm, '%', 'state:chance')
  }
}
