import type { Instant } from '../instant.js'

/** Minutes from an instant to now; null when the instant is not known. */
export function minutesSince(at: Instant | null, now: Instant): number | null {
  return at === null ? null : (now - at) / 60
}
