import type { ReachWay } from '../../core/kits/reach.js'

/** What is said of a run of foam: how far it may go, and what its stops cost. */
export interface RunWords {
  readonly ways: Readonly<Record<ReachWay, string>>
  reach(list: string): string
  readonly noLimit: string
  /** The foam does not stay open long enough for any run. */
  readonly none: string
  /** A stop takes longer than foam stays soft in the nozzle. */
  gels(stop: string, gel: string): string
  /** Nozzles run out before foam: needed and given for a kit. */
  short(needed: number, perKit: number): string
  /** The shortest open time of a day, and how far a run goes then. */
  shortest(openTime: string, every: string): string
}
