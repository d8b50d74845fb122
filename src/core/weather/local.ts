import type { Instant } from '../instant.js'

/** One thing read on the roof. */
export interface Read {
  readonly value: number
  readonly at: Instant
}

/** By how much a reading was above the forecast, and when. */
export interface Off {
  readonly by: number
  readonly at: Instant
}

/** What readings on the roof say of the forecast; null where nothing was read or nothing was forecast. */
export interface Local {
  readonly airC: Off | null
  readonly rhPct: Off | null
  readonly windKmh: Off | null
  readonly gustKmh: Off | null
}

/** What a reading tells of the hours around it fades with this time constant. */
export const fadeS = 6 * 3600

/** One standard deviation of a crew's own reading. Source: from memory. */
export const readingSpread = { surfaceK: 0.5, airK: 0.5, rhPct: 3, windKmh: 3, gustKmh: 5 } as const

/** 1 at a reading, 1/e after 6 h, before and after alike. */
export function fading(sinceS: number): number {
  return Math.exp(-Math.abs(sinceS) / fadeS)
}

/** What a reading adds to the forecast at an instant, in its own unit. */
export function added(off: Off | null, at: Instant): number {
  return off === null ? 0 : off.by * fading(at - off.at)
}

/**
 * Standard deviation of a forecast value near a reading: that of the reading itself (`own`) at the reading, `sigma` far from it, as
 * for an error that is forgotten with `fadeS`. A reading that the forecast missed by more than `sigma` shows that the forecast
 * is worse than it says: in between, the spread is then wider for it. Linear estimation, first-order Markov; no source.
 */
export function spreadNear(sigma: number, off: Off | null, own: number, at: Instant): number {
  if (off === null) return sigma
  const known = fading(at - off.at) ** 2
  const doubt = known * Math.max(0, off.by ** 2 - sigma ** 2)
  return Math.sqrt(known * Math.min(own, sigma) ** 2 + (1 - known) * (sigma ** 2 + doubt))
}
