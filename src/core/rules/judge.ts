import { type Fact, isEstimate } from '../fact.js'
import type { Verdict } from '../finding.js'
import type { Fix } from '../fix.js'
import type { Limit } from '../limits/sheet.js'
import type { Outcome } from '../outcome.js'
import { convert, round6, type Unit } from '../units.js'
import { interval, mix, reachOf } from './interval.js'

/** Which bounds put a value that stands on them on their worse side: none as a rule, both for a chance of rain, the no-go ones for some. */
export type Strict = 'none' | 'no-go' | 'all'

/** Nearer to a bound than this, rounding to 6 decimals may put a value on its other side. */
const nearby = 2e-6

export interface Fixes {
  /** What to do when the value is missing or an estimate too near a no-go bound. */
  readonly read: Fix
  /** What to do below the low bounds, above the high bounds. */
  readonly low: Fix
  readonly high: Fix
  /** What to do on a caution, where that differs. */
  readonly caution?: Fix
}

/** One value against the bounds, all in the unit of the sheet, both sides rounded to 6 decimals. A NaN is beyond any bound. */
function band(value: number, limit: Limit, strict: Strict): Outcome {
  if (isBeyond(value, limit.min, limit.max, strict !== 'none')) return 'no-go'
  return isBeyond(value, limit.cautionBelow, limit.cautionAbove, strict === 'all') ? 'caution' : 'go'
}

function isBeyond(value: number, low: number | null, high: number | null, strict: boolean): boolean {
  const aboveLow = low === null ? 1 : over(value, low)
  const belowHigh = high === null ? 1 : over(high, value)
  return strict ? !(aboveLow > 0 && belowHigh > 0) : !(aboveLow >= 0 && belowHigh >= 0)
}

/** By how much a value is over another, both rounded: only where they are this near does it take the rounding to tell. */
function over(value: number, other: number): number {
  const by = value - other
  return by > nearby || by < -nearby ? by : round6(value) - round6(other)
}

/** Signed distance to the nearer no-go bound, positive inside, and how wide the caution band on that side is (null: none). */
interface Near {
  readonly bound: number
  readonly margin: number
  readonly width: number | null
}

function nearest(value: number, limit: Limit): Near | null {
  const { min, max, cautionBelow, cautionAbove } = limit
  if (min !== null && (max === null || value - min <= max - value)) {
    return { bound: min, margin: value - min, width: cautionBelow === null ? null : cautionBelow - min }
  }
  if (max === null) return null
  return { bound: max, margin: max - value, width: cautionAbove === null ? null : max - cautionAbove }
}

/**
 * Judges a fact in `unit` (a JSON unit) against a limit of the sheet. A person's value decides at the plain bound,
 * an estimate only when it is clear of it. Missing (or not a number) is `unknown`.
 */
export function judge(fact: Fact, unit: Unit, limit: Limit, fixes: Fixes, strict: Strict = 'none'): Verdict {
  const { value } = fact
  if (value === null || !Number.isFinite(value)) return unknown(fact, unit, fixes.read)
  return unit === limit.unit ? judged(fact, value, limit, fixes, strict) : converted(fact, value, unit, limit, fixes, strict)
}

/** Judged in the unit of the sheet, told in that of the value. */
function converted(fact: Fact, value: number, unit: Unit, limit: Limit, fixes: Fixes, strict: Strict): Verdict {
  const [ofSheet, ofValue] = [difference(limit.unit), difference(unit)]
  const scaled = { ...fact, value: inUnit(value, unit, limit.unit), spread: inUnit(fact.spread, ofValue, ofSheet) }
  const verdict = judged(scaled, scaled.value, limit, fixes, strict)
  const { limit: bound, margin } = verdict
  return {
    ...verdict,
    value,
    unit,
    limit: bound === null ? null : inUnit(bound, limit.unit, unit),
    margin: margin === null ? null : inUnit(margin, ofSheet, ofValue),
    spread: fact.spread
  }
}

/** A value in the unit of the limit. A plan asks for thousands of these: what is rare in it stands in functions of its own. */
function judged(fact: Fact, value: number, limit: Limit, fixes: Fixes, strict: Strict): Verdict {
  const { spread, origin, at, stale } = fact
  const isSpread = spread !== 0 && isEstimate(fact)
  const isGo = isClear(value, isSpread ? reachOf(spread) : 0, limit)
  const outcome = isGo ? 'go' : isSpread ? estimated(value, spread, limit, strict) : band(value, limit, strict)
  const near = nearest(value, limit)
  return {
    outcome,
    value,
    unit: limit.unit,
    limit: near === null ? null : near.bound,
    margin: near === null ? null : near.margin,
    spread,
    origin,
    at,
    stale,
    fix: outcome === 'go' ? null : fixFor(outcome, value, limit, fixes),
    // Rounded, so that two that bind alike stand in the same order in either system of units.
    ease: near === null || near.width === null || !(near.width > 0) ? null : round6(near.margin / near.width)
  }
}

/** Farther from every bound than rounding could tell, on its better side, with all that it reaches: go, whatever else there is to know. */
function isClear(value: number, reach: number, { min, max, cautionBelow, cautionAbove }: Limit): boolean {
  const low = value - reach - nearby
  const high = value + reach + nearby
  return (
    (min === null || low > min) &&
    (cautionBelow === null || low > cautionBelow) &&
    (max === null || high < max) &&
    (cautionAbove === null || high < cautionAbove)
  )
}

/** Bands have no gaps: between two ends nothing is worse than they are, and something better counts only where both are no-go. */
function estimated(value: number, spread: number, limit: Limit, strict: Strict): Outcome {
  const reach = reachOf(spread)
  const ends = mix(band(value - reach, limit, strict), band(value + reach, limit, strict))
  return ends === 'no-go' ? throughout(value, spread, limit, strict) : ends
}

function throughout(value: number, spread: number, limit: Limit, strict: Strict): Outcome {
  return interval(value, spread, [limit.min, limit.max, limit.cautionBelow, limit.cautionAbove], (point) => band(point, limit, strict))
}

function fixFor(outcome: Outcome, value: number, limit: Limit, fixes: Fixes): Fix {
  if (outcome === 'unknown') return fixes.read
  if (outcome === 'caution' && fixes.caution !== undefined) return fixes.caution
  const low = limit.cautionBelow ?? limit.min
  const high = limit.cautionAbove ?? limit.max
  if (low === null || high === null) return low === null ? fixes.high : fixes.low
  return value - low <= high - value ? fixes.low : fixes.high
}

function difference(unit: Unit): Unit {
  if (unit === 'C') return 'K'
  return unit === 'F' ? 'deltaF' : unit
}

function inUnit(value: number, from: Unit, to: Unit): number {
  if (from === to) return value
  const converted = convert(value, from, to)
  if (converted === null) throw new Error(`a limit in ${to} cannot judge a value in ${from}`)
  return converted
}

/** What is not known: no value, no limit, and what to do about it. */
export function unknown(fact: Fact<unknown>, unit: string | null, fix: Fix): Verdict {
  return {
    outcome: 'unknown',
    value: null,
    unit,
    limit: null,
    margin: null,
    spread: fact.spread,
    origin: fact.origin,
    at: fact.at,
    stale: fact.stale,
    fix,
    ease: null
  }
}

/** A verdict of a statement rule: no limit and no margin. `value` is what the answer shows: true where all is well, null where nothing is. */
export function stated(outcome: Outcome, value: boolean | number | null, fact: Fact<unknown>, fix: Fix | null, unit: string | null = null): Verdict {
  return {
    outcome,
    value,
    unit,
    limit: null,
    margin: null,
    spread: 0,
    origin: fact.origin,
    at: fact.at,
    stale: fact.stale,
    fix: outcome === 'go' ? null : fix,
    ease: null
  }
}
