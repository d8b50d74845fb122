import { isEstimate, type Fact } from '../fact.js'
import type { Verdict } from '../finding.js'
import type { Fix } from '../fix.js'
import type { Limit } from '../limits/sheet.js'
import { rank, type Outcome } from '../outcome.js'
import { convert, round6, type Unit } from '../units.js'

/** One-sided 95 % of a normal distribution: how clear of a limit an estimate must be. */
const clear = 1.645

export interface Fixes {
  /** What to do when the value is missing or an estimate too near a no-go bound. */
  readonly read: Fix
  /** What to do below the low bounds, above the high bounds. */
  readonly low: Fix
  readonly high: Fix
}

/** One value against the bounds, all in the unit of the sheet; a value on a bound is on its better side (`strict`: on the worse). */
function band(value: number, limit: Limit, strict: boolean): Outcome {
  const v = round6(value)
  const below = (bound: number | null) => bound !== null && (strict ? v <= round6(bound) : v < round6(bound))
  const above = (bound: number | null) => bound !== null && (strict ? v >= round6(bound) : v > round6(bound))
  if (below(limit.min) || above(limit.max)) return 'no-go'
  return below(limit.cautionBelow) || above(limit.cautionAbove) ? 'caution' : 'go'
}

/** Value minus and plus 1.645 s, and every bound between: all alike → that; go and caution → caution; no-go and other → unknown. */
function interval(value: number, reach: number, limit: Limit, strict: boolean): Outcome {
  const points = [value - reach, value + reach]
  for (const bound of [limit.min, limit.max, limit.cautionBelow, limit.cautionAbove]) {
    if (bound !== null && bound > value - reach && bound < value + reach) points.push(bound)
  }
  const seen = points.map((point) => band(point, limit, strict))
  if (!seen.includes('no-go')) return seen.includes('caution') ? 'caution' : 'go'
  return seen.every((outcome) => outcome === 'no-go') ? 'no-go' : 'unknown'
}

/** Signed distance to the nearer no-go bound and the caution band on that side, in the unit of the sheet. */
function nearest(value: number, limit: Limit): { bound: number; margin: number; width: number | null } | null {
  const low = limit.min === null ? null
    : { bound: limit.min, margin: value - limit.min, width: limit.cautionBelow === null ? null : limit.cautionBelow - limit.min }
  const high = limit.max === null ? null
    : { bound: limit.max, margin: limit.max - value, width: limit.cautionAbove === null ? null : limit.max - limit.cautionAbove }
  if (low === null || high === null) return low ?? high
  return low.margin <= high.margin ? low : high
}

/**
 * Judges a fact in `unit` (a JSON unit) against a limit of the sheet. A person's value decides at the plain bound,
 * an estimate only when it is clear of it. Missing is `unknown`. `strict` puts a value on a bound on its worse side.
 */
export function judge(fact: Fact, unit: Unit, limit: Limit, fixes: Fixes, strict = false): Verdict {
  const { value, origin, at, stale, spread } = fact
  if (value === null) {
    return { outcome: 'unknown', value, unit, limit: null, margin: null, spread, origin, at, stale, fix: fixes.read, ease: null }
  }
  const scaled = inUnit(value, unit, limit.unit)
  const scale = spread === 0 ? 0 : inUnit(spread, difference(unit), difference(limit.unit))
  const outcome = isEstimate(fact) && spread > 0 ? interval(scaled, clear * scale, limit, strict) : band(scaled, limit, strict)
  const near = nearest(scaled, limit)
  return {
    outcome, value, unit, spread, origin, at, stale,
    limit: near === null ? null : inUnit(near.bound, limit.unit, unit),
    margin: near === null ? null : inUnit(near.margin, difference(limit.unit), difference(unit)),
    fix: fixFor(outcome, scaled, limit, fixes),
    ease: near === null || near.width === null || near.width <= 0 ? null : near.margin / near.width
  }
}

function fixFor(outcome: Outcome, value: number, limit: Limit, fixes: Fixes): Fix | null {
  if (rank[outcome] === rank.go) return null
  if (outcome === 'unknown') return fixes.read
  const lowBound = limit.cautionBelow ?? limit.min
  return lowBound !== null && round6(value) <= round6(lowBound) ? fixes.low : fixes.high
}

function difference(unit: Unit): Unit {
  if (unit === 'C') return 'K'
  return unit === 'F' ? 'deltaF' : unit
}

function inUnit(value: number, from: Unit, to: Unit): number {
  const converted = convert(value, from, to)
  if (converted === null) throw new Error(`a limit in ${to} cannot judge a value in ${from}`)
  return converted
}

/** A verdict of a statement rule: no limit and no margin. */
export function stated(outcome: Outcome, fact: Fact<unknown>, fix: Fix | null): Verdict {
  const value = typeof fact.value === 'boolean' || typeof fact.value === 'number' ? fact.value : null
  return {
    outcome, value, unit: null, limit: null, margin: null, spread: 0,
    origin: fact.origin, at: fact.at, stale: fact.stale, fix: outcome === 'go' ? null : fix, ease: null
  }
}
