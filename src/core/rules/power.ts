import { type Fixes, judge } from './judge.js'
import type { Rule } from './rule.js'

const fixes: Fixes = { read: 'state:lead', low: 'shorten:lead', high: 'shorten:lead' }

export const power: Rule = {
  judges: { weld: 'checklist' },
  source: 'from memory; conductor resistance by IEC 60228',
  check(facts, sheet) {
    const verdict = judge(facts.dropPct, '%', sheet.limits.powerDrop, fixes)
    // What the tool really gets was measured: its coupon decides, not the lead.
    return verdict.outcome === 'no-go' && facts.powerMeasured ? { ...verdict, outcome: 'caution' } : verdict
  }
}
