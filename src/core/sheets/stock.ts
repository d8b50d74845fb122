import { above, within } from '../physics/range.js'
import { bestFit } from './stock/best-fit.js'
import { type Pattern, searchPatterns } from './stock/exact.js'
import { leastRolls, type Size } from './stock/sizes.js'

export interface CutRoll {
  /** Indexes of the pieces that were asked for. */
  readonly pieces: readonly number[]
  readonly leftMm: number
}

export interface StockPlan {
  readonly rolls: readonly CutRoll[]
  /** No plan needs fewer rolls. */
  readonly bound: number
  /** Whether it is known that fewer will not do: always where `bound` is the number of rolls. */
  readonly exact: boolean
}

const mostPieces = 100_000
/** 0.1 + 0.2 m is no longer than 0.3 m. */
const halfUm = 0.0005
/** Beyond so many pieces or sizes nothing but the heuristic is tried: a search would hardly end. */
const searched = { pieces: 400, sizes: 120, steps: 150_000 }

/**
 * Cuts pieces (> 0 mm … the roll) from rolls of one length (> 0…1e6 mm), as few rolls as can be found: best fit, longest first;
 * where its count is not the bound, branch and bound over whole rolls for a bounded number of steps. A saw takes nothing.
 * Lengths count in whole µm. RangeError outside, with a piece longer than the roll; no pieces, no rolls.
 */
export function cutStock(lengthsMm: readonly number[], rollMm: number): StockPlan {
  above('rollMm', rollMm, 0, 1e6)
  within('pieces', lengthsMm.length, 0, mostPieces)
  for (const lengthMm of lengthsMm) above('lengthMm', lengthMm, 0, rollMm + halfUm)
  const rollUm = toUm(rollMm)
  const lengthsUm = lengthsMm.map((lengthMm) => Math.min(rollUm, Math.max(1, toUm(lengthMm))))
  const sizes = sizesOf(lengthsUm)
  const [bound, fitted] = [leastRolls(sizes, rollUm), bestFit(lengthsUm, rollUm)]
  if (fitted.length === bound || lengthsMm.length > searched.pieces || sizes.length > searched.sizes)
    return planOf(fitted, lengthsUm, rollUm, bound, fitted.length === bound)
  const { patterns, complete } = searchPatterns(sizes, rollUm, fitted.length, searched.steps)
  const rolls = patterns === null ? fitted : piecesOf(patterns, sizes, lengthsUm)
  const exact = complete || rolls.length === bound
  return planOf(rolls, lengthsUm, rollUm, exact ? rolls.length : bound, exact)
}

function toUm(mm: number): number {
  return Math.round(mm * 1000)
}

/** Sizes and how many of each, largest first. */
function sizesOf(lengthsUm: readonly number[]): readonly Size[] {
  const counts = new Map<number, number>()
  for (const um of lengthsUm) counts.set(um, (counts.get(um) ?? 0) + 1)
  return [...counts].sort(([a], [b]) => b - a).map(([um, count]) => ({ um, count }))
}

/** Pieces in the order they were asked for, for the patterns of their sizes. */
function piecesOf(patterns: readonly Pattern[], sizes: readonly Size[], lengthsUm: readonly number[]): readonly (readonly number[])[] {
  const waiting = new Map<number, number[]>()
  for (const [index, um] of lengthsUm.entries()) waiting.set(um, [...(waiting.get(um) ?? []), index])
  return patterns.map((pattern) => pattern.flatMap((count, size) => waiting.get(sizes[size]?.um as number)?.splice(0, count) ?? []))
}

function planOf(rolls: readonly (readonly number[])[], lengthsUm: readonly number[], rollUm: number, bound: number, exact: boolean): StockPlan {
  const leftUm = (pieces: readonly number[]) => pieces.reduce((left, piece) => left - (lengthsUm[piece] as number), rollUm)
  return { rolls: rolls.map((pieces) => ({ pieces, leftMm: leftUm(pieces) / 1000 })), bound, exact }
}
