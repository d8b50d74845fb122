/** `stop`: spray, stop, unroll and cover · `follow`: unroll behind the gun at a lag · `flop`: half a sheet folded back, dropped in at once. */
export const reachWays = ['stop', 'follow', 'flop'] as const
export type ReachWay = (typeof reachWays)[number]

export interface ReachInput {
  readonly how: ReachWay
  readonly openTimeS: number
  /** From the last foam to the first sheet on it. */
  readonly handOverS: number
  /** Until what was covered is rolled in. */
  readonly rollS: number
  /** Advance along the sheet, m/s: gun speed × fan ÷ sheet width. */
  readonly sprayMs: number
  readonly unrollMs: number
  /** How far behind the gun the sheet follows. */
  readonly lagS: number
}

/**
 * How many metres can be sprayed before they must be covered and rolled in; null: no limit. 0 where the time is used up
 * before the start, and for anything that is not a number ≥ 0: a reach nobody can vouch for is none.
 * Kinematics of the three ways, no source.
 */
export function reachM(run: ReachInput): number | null {
  const { how, openTimeS, handOverS, rollS, sprayMs, unrollMs, lagS } = run
  if (![openTimeS, handOverS, rollS, sprayMs, unrollMs, lagS].every((value) => value >= 0 && value < Infinity)) return 0
  if (how === 'stop') return Math.max(0, openTimeS - handOverS - rollS) * Math.min(sprayMs, unrollMs)
  if (how === 'flop') return Math.max(0, openTimeS - handOverS) * sprayMs
  const spareS = openTimeS - lagS - rollS
  if (!(spareS > 0 && unrollMs > 0)) return 0
  if (unrollMs >= sprayMs) return null
  return spareS / (1 / unrollMs - 1 / sprayMs)
}
