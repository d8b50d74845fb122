import type { LimitsSheet } from '../limits/sheet.js'
import { reachM } from './reach.js'

type Sheet = Pick<LimitsSheet, 'crew' | 'foam' | 'sheet'>

/** One run of foam by the three ways of working, and what its stops cost. */
export interface Runs {
  /** Spray, stop, unroll and cover. */
  readonly stopM: number
  /** Unrolling behind the gun; null: no limit. */
  readonly followM: number | null
  /** Half a sheet folded back, dropped in at once. */
  readonly flopM: number
  /** Stop and roll every so many metres: never more than a roll. 0: the foam does not stay open long enough. */
  readonly stopEveryM: number
  /** How long the gun rests at such a stop, s. */
  readonly stopS: number
  /** Runs that a sheet of a whole roll takes; null where none is possible. */
  readonly runsPerSheet: number | null
}

/**
 * Reach of a run for an open time (s) by the rates of a limits sheet; null open time: null. The gun advances along the sheet by its
 * speed × its fan ÷ the width of the sheet. Kinematics, no source.
 */
export function runsFor(openTimeS: number | null, { crew, foam, sheet }: Sheet): Runs | null {
  if (openTimeS === null || !(openTimeS >= 0)) return null
  const unrollMs = crew.unrollMMin / 60
  const sprayMs = (crew.gunMMin / 60) * (crew.fanMm / 1000 / sheet.widthM)
  const run = { openTimeS, handOverS: foam.handOverS, rollS: foam.rollInS, sprayMs, unrollMs, lagS: crew.lagS }
  const stopM = reachM({ ...run, how: 'stop' }) ?? 0
  const stopEveryM = Math.min(stopM, sheet.rollM)
  return {
    stopM,
    followM: reachM({ ...run, how: 'follow' }),
    flopM: reachM({ ...run, how: 'flop' }) ?? 0,
    stopEveryM,
    stopS: foam.handOverS + stopEveryM / unrollMs + foam.rollInS,
    runsPerSheet: stopEveryM > 0 ? Math.ceil(sheet.rollM / stopEveryM - 1e-9) : null
  }
}

export interface Nozzles {
  /** That a kit takes until its foam is used up. */
  readonly needed: number
  readonly perKit: number
  /** The nozzles run out before the foam. */
  readonly short: boolean
  /** A stop is longer than foam stays soft in the nozzle. */
  readonly gelsAtStops: boolean
}

/**
 * Nozzles of a kit: one for each sheet begun, since moving on takes longer than foam stays soft in the nozzle; one for each run where
 * the stops between runs do too. Common practice, no source. Null where no run is possible.
 */
export function nozzlesFor(runs: Runs | null, { foam, sheet }: Sheet): Nozzles | null {
  const coverM = sheet.widthM - sheet.lapMm / 1000
  if (runs === null || runs.runsPerSheet === null || !(coverM > 0)) return null
  const sheetsPerKit = foam.yieldM2PerKit / (sheet.rollM * coverM)
  const gelsAtStops = runs.runsPerSheet > 1 && runs.stopS > foam.nozzleGelS
  const needed = Math.ceil((gelsAtStops ? runs.runsPerSheet : 1) * sheetsPerKit - 1e-9)
  return { needed, perKit: foam.nozzlesPerKit, short: needed > foam.nozzlesPerKit, gelsAtStops }
}
