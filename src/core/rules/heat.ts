import { type Fact, isEstimate } from '../fact.js'
import type { Because, Verdict } from '../finding.js'
import type { Limit, LimitsSheet } from '../limits/sheet.js'
import { alertLimitC, metabolicW } from '../physics/niosh.js'
import { round6 } from '../units.js'
import { reachOf } from './interval.js'
import { type Fixes, judge } from './judge.js'
import { airOrHumidity } from './reading-to-take.js'
import type { Rule } from './rule.js'

const fixes: Fixes = { read: 'read:humidity', low: 'wait:heat', high: 'wait:heat', caution: 'rest:shade' }

/** °C WBGT: people here are taken for not used to heat, and roofing for heavy work. */
export const alertC = alertLimitC(metabolicW.heavy)

export const heat: Rule = {
  judges: { people: 'people' },
  source: 'NWS heat index classes; NIOSH 2016-106 alert limit',
  check(facts, sheet) {
    const verdict = byHeatIndex(facts.heatIndexC, sheet)
    if (verdict.outcome === 'unknown') return { ...verdict, fix: airOrHumidity(facts) }
    const because = verdict.outcome === 'go' ? overAlert(facts.wbgtC) : null
    return because === null ? verdict : { ...verdict, outcome: 'caution', fix: 'rest:shade', because }
  }
}

/** WBGT is looked at only where the heat index alone would let people work. */
export function asksForWbgt(heatIndexC: Fact, sheet: LimitsSheet): boolean {
  return byHeatIndex(heatIndexC, sheet).outcome === 'go'
}

function byHeatIndex(heatIndexC: Fact, sheet: LimitsSheet): Verdict {
  const noPlan = noPlanLimit(sheet)
  return noPlan === null ? judge(heatIndexC, 'C', sheet.limits.heatIndex, fixes, 'no-go') : judge(heatIndexC, 'C', noPlan, fixes)
}

/** The limit of a site without a heat plan, in the unit of the sheet; null when the general stop comes first. */
function noPlanLimit(sheet: LimitsSheet): Limit | null {
  if (sheet.site.heatPlan) return null
  const general: Limit = sheet.limits.heatIndex
  const { max } = sheet.limits.heatIndexNoPlan
  return max !== null && (general.max === null || max < general.max) ? { ...general, max } : null
}

/** WBGT that is over the alert limit, or as an estimate may be; null where it is not, or not known. */
function overAlert(fact: Fact): Because | null {
  const { value, spread, origin } = fact
  if (value === null || !(value + (isEstimate(fact) ? reachOf(spread) : 0) > alertC)) return null
  return { of: 'wbgt', value, unit: 'C', limit: round6(alertC), margin: round6(alertC - value), spread, origin }
}
