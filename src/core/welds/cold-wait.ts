import type { Instant } from '../instant.js'

/** Minutes that a weld needs to cool through before the probe says anything; from memory, a thumb on the seam says it better. */
export const coldWaitMin = 10

/**
 * The instant from which a weld made at `weldedAt` may be probed; null when it may be now. A probe before it slips off soft sheet
 * and finds nothing.
 */
export function waitUntil(weldedAt: Instant | null, now: Instant): Instant | null {
  if (weldedAt === null) return null
  const until = weldedAt + coldWaitMin * 60
  return now >= weldedAt && now < until ? until : null
}
