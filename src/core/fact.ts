import type { Instant } from './instant.js'
import { round6 } from './units.js'

/** Where a value comes from. `reading` and `statement` are a person's, `log` follows from entries, the rest are estimates. */
export type Origin = 'reading' | 'statement' | 'forecast' | 'model' | 'log'

/** A value that knows where it comes from. `null` is known to be missing; `stale` says that what there was is too old to use. */
export interface Fact<T = number> {
  readonly value: T | null
  readonly at: Instant | null
  readonly origin: Origin | null
  /** One standard deviation in the unit of the value; 0 for what decides by its value. */
  readonly spread: number
  readonly stale: boolean
}

export const missing: Fact<never> = { value: null, at: null, origin: null, spread: 0, stale: false }

/** A fact said or read by a person, or following from the log: it decides by its value. */
export function certain<T>(value: T, at: Instant, origin: 'reading' | 'statement' | 'log'): Fact<T> {
  return { value, at, origin, spread: 0, stale: false }
}

/** True for what decides only when it is clear of a limit by 1.645 standard deviations. */
export function isEstimate(fact: Fact<unknown>): boolean {
  return fact.origin === 'forecast' || fact.origin === 'model'
}

/** Six decimals, as they are kept: a replay then starts from the very same numbers. */
export function rounded(fact: Fact): Fact {
  if (fact.value === null) return fact
  const { at, origin, stale } = fact
  return { value: round6(fact.value), at, origin, spread: round6(fact.spread), stale }
}
