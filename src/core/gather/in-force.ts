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
  if (now - noted.at <= maxAgeMin * 60) return certain(noted.value, noted.at, origin)
  return estimate.value === null ? { ...missing, origin, at: noted.at, stale: true } : estimate
}
