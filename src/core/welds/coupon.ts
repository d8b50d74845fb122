import type { CouponCause, Peel } from '../log/data.js'
import { round6 } from '../units.js'

export type Move = 'up' | 'down' | 'keep'

export interface Moves {
  readonly temperature: Move
  readonly speed: Move
  readonly pressure: Move
}

export interface CouponJudgement {
  /** Null: not judged, because still warm or half told. */
  readonly passed: boolean | null
  readonly cause: CouponCause | null
  readonly move: Moves
}

export interface CouponInput {
  /** The narrowest width. */
  readonly widthMm: number
  readonly peel: Peel | null
  readonly warm: boolean
  readonly minWidthMm: number
  /** Coupons that failed for the same cause just before this one. */
  readonly failedBefore?: (cause: CouponCause) => number
}

export const keep: Moves = { temperature: 'keep', speed: 'keep', pressure: 'keep' }

/**
 * One thing at a time, and the other one when the first did not help. Slower before hotter, because speed answers at once and the
 * set-point needs minutes; a narrow weld that peels well is a matter of overlap, track, nozzle or roller, not of the three
 * settings. Common practice, no source.
 */
const moves: Readonly<Record<CouponCause, readonly Moves[]>> = {
  cold: [
    { ...keep, speed: 'down' },
    { ...keep, temperature: 'up' }
  ],
  hot: [
    { ...keep, speed: 'up' },
    { ...keep, temperature: 'down' }
  ],
  uneven: [{ ...keep, pressure: 'up' }],
  narrow: [keep]
}

/** Which way to move after a coupon that failed for a cause, when `before` others just before it failed for the same. */
export function movesFor(cause: CouponCause, before: number): Moves {
  const ways = moves[cause]
  return ways[before % ways.length] ?? keep
}

const causes: Readonly<Record<Exclude<Peel, 'film'>, CouponCause>> = {
  parted: 'cold',
  scorched: 'hot',
  glossy: 'hot',
  uneven: 'uneven',
  wrinkled: 'uneven'
}

/** Good: the film peels off the scrim and the narrowest width (mm, ≥ 0) reaches the minimum. Common practice, no source. */
export function judgeCoupon({ widthMm, peel, warm, minWidthMm, failedBefore = () => 0 }: CouponInput): CouponJudgement {
  if (warm || peel === null || !(widthMm >= 0 && minWidthMm >= 0)) return { passed: null, cause: null, move: keep }
  if (peel === 'film' && round6(widthMm) >= round6(minWidthMm)) return { passed: true, cause: null, move: keep }
  const cause = peel === 'film' ? 'narrow' : causes[peel]
  return { passed: false, cause, move: movesFor(cause, failedBefore(cause)) }
}
