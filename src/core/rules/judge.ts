import { type Fact, isEstimate } from '../fact.js'
import type { Verdict } from '../finding.js'
import type { Fix } from '../fix.js'
import type { Limit } from '../limits/sheet.js'
import type { Outcome } from '../outcome.js'
import { convert, round6, type Unit } from '../units.js'
import { interval } from './interval.js'

/** Which bounds put a value that stands on them on their worse side: none as a rule, both for a chance of rain, the no-go ones for some. */
export type Strict = 'none' | 'no-go' | 'all'

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
  const v = round6(value)
  if (isBeyond(v, limit.min, limit.max, strict !== 'none')) return 'no-go'
  return isBeyond(v, limit.cautionBelow, limit.cautionAbove, strict === 'all') ? 'caution' : 'go'
}

function isBeyond(value: number, low: number | null, high: number | null, strict: boolean): boolean {
  if (low !== null && !(strict ? value > round6(low) : value >= round6(low))) return true
  return high !== null && !(strict ? value < round6(high) : value <= round6(high))
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
  const { value, spread, origin, at, stale } = fact
  if (value === null || !Number.isFinite(value)) return unknown(fact, unit, fixes.read)
  const scaled = inUnit(value, unit, limit.unit)
  const outcome = isEstimate(fact) && spread !== 0 ? estimated(scaled, spread, unit, limit, strict) : band(scaled, limit, strict)
  const near = nearest(scaled, limit)
  return {
    outcome,
    value,
    unit,
    limit: near === null ? null : inUnit(near.bound, limit.unit, unit),
    margin: near === null ? null : inUnit(near.margin, difference(limit.unit), difference(unit)),
    spread,
    origin,
    at,
    stale,
    fix: outcome === 'go' ? null : fixFor(outcome, scaled, limit, fixes),
    // Rounded, so that two that bind alike stand in the same order in either system of units.
    ease: near === null || near.width === null || !(near.width > 0) ? null : round6(near.margin / near.width)
  }
}

function estimated(scaled: number, spread: number, unit: Unit, limit: Limit, strict: Strict): Outcome {
  const scaledSpread = unit === limit.unit ? spread : inUnit(spread, difference(unit), difference(limit.unit))
  return interval(scaled, scaledSpread, [limit.min, limit.max, limit.cautionBelow, limit.cautionAbove], (point) => band(point, limit, strict))
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
