/** Metres of a welder, and how far the work on those under suspicion has come. */
export interface Holding {
  /** Welded between two passes. */
  readonly clearedM: number
  /** Welded while cleared, since the last pass: a failure puts them on hold. */
  readonly sincePassM: number
  /** Under suspicion: welded while not cleared, or between the last pass and a failure. */
  readonly onHoldM: number
  readonly releasedM: number
  /** Pieces cut out of the seam on hold that were good, one after another. */
  readonly goodCuts: number
  /** Everything on hold was probed. */
  readonly probed: boolean
}

export const noHold: Holding = { clearedM: 0, sincePassM: 0, onHoldM: 0, releasedM: 0, goodCuts: 0, probed: false }

/** Cut back until so many are good. Common practice, no source. */
export const goodCutsNeeded = 2

/** Puts metres (≥ 0) on hold; what was probed and cut before says nothing of them. */
export function hold<H extends Holding>(holding: H, metres: number): H {
  return metres > 0 ? { ...holding, onHoldM: holding.onHoldM + metres, goodCuts: 0, probed: false } : holding
}

/** What still stands between metres on hold and their release. */
export type ReleaseLacks = 'nothing-on-hold' | 'not-probed' | 'no-good-cuts'

export function lackingForRelease({ onHoldM, goodCuts, probed }: Holding): ReleaseLacks | null {
  if (!(onHoldM > 0)) return 'nothing-on-hold'
  if (goodCuts < goodCutsNeeded) return 'no-good-cuts'
  return probed ? null : 'not-probed'
}

/** Releases metres (> 0, no more than are on hold) once they were cut back to good ones and probed; otherwise nothing changes. */
export function release<H extends Holding>(holding: H, metres: number): H {
  if (lackingForRelease(holding) !== null || !(metres > 0)) return holding
  const freed = Math.min(metres, holding.onHoldM)
  const left = holding.onHoldM - freed
  const released = { ...holding, onHoldM: left, releasedM: holding.releasedM + freed }
  return left > 0 ? released : { ...released, goodCuts: 0, probed: false }
}

/** Metres by what may be said of them: cleared (since the last pass with them), on hold, released. They add up to all metres welded. */
export function metresOf({ clearedM, sincePassM, onHoldM, releasedM }: Holding) {
  return { clearedM: clearedM + sincePassM, onHoldM, releasedM }
}
