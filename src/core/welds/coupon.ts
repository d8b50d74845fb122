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
}

const keep: Moves = { temperature: 'keep', speed: 'keep', pressure: 'keep' }

/**
 * One thing at a time. Slower before hotter, because speed answers at once and the set-point needs minutes; a narrow
 * weld that peels well is a matter of overlap, track, nozzle or roller, not of the three settings. Common practice, no source.
 */
const moves: Readonly<Record<CouponCause, Moves>> = {
  cold: { ...keep, speed: 'down' },
  hot: { ...keep, speed: 'up' },
  uneven: { ...keep, pressure: 'up' },
  narrow: keep
}

const causes: Readonly<Record<Exclude<Peel, 'film'>, CouponCause>> = {
  parted: 'cold',
  scorched: 'hot',
  glossy: 'hot',
  uneven: 'uneven',
  wrinkled: 'uneven'
}

/** Good: the film peels off the scrim and the narrowest width (mm, ≥ 0) reaches the minimum. Common practice, no source. */
export function judgeCoupon({ widthMm, peel, warm, minWidthMm }: CouponInput): CouponJudgement {
  if (warm || peel === null || !(widthMm >= 0 && minWidthMm >= 0)) return { passed: null, cause: null, move: keep }
  if (peel !== 'film') return { passed: false, cause: causes[peel], move: moves[causes[peel]] }
  if (round6(widthMm) >= round6(minWidthMm)) return { passed: true, cause: null, move: keep }
  return { passed: false, cause: 'narrow', move: moves.narrow }
}
