import { certain, type Fact, missing } from '../fact.js'
import type { Instant } from '../instant.js'
import type { Noted } from '../log/states/noted.js'

/**
 * What holds now: what was last read or stated while it is not past its age, else the estimate, else unknown.
 * Something too old and no estimate is `stale`.
 */
export function inForce<T>(
  noted: Noted<T> | undefined | null,
  maxAgeMin: number,
  now: Instant,
  origin: 'reading' | 'statement',
  estimate: Fact<T>
): Fact<T> {
  if (!noted) return estimate
  if (isInForce(noted, maxAgeMin, now)) return certain(noted.value, noted.at, origin)
  return estimate.value === null ? { ...missing, origin, at: noted.at, stale: true } : estimate
}

/** Not past its age; what was said of an instant after `now` is in force as well. */
export function isInForce({ at }: Pick<Noted<unknown>, 'at'>, maxAgeMin: number, now: Instant): boolean {
  return now - at <= maxAgeMin * 60
}
