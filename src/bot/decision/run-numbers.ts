import { nozzlesFor, runsFor } from '../../core/kits/runs.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import type { Json } from '../../core/log/entry.js'

/**
 * How far ahead foam may be sprayed, and what the stops cost in nozzles. `reachM` is that of spraying, stopping and covering; every way
 * of working is in `ways`, where `noLimit` says that a null is no limit and not something unknown.
 */
export function runNumbers(openTimeS: number | null, sheet: LimitsSheet): Readonly<Record<string, Json>> {
  const runs = runsFor(openTimeS, sheet)
  const nozzles = nozzlesFor(runs, sheet)
  const ways =
    runs === null
      ? []
      : ([
          { how: 'stop', reachM: runs.stopM },
          { how: 'follow', reachM: runs.followM },
          { how: 'flop', reachM: runs.flopM }
        ] as const)
  return {
    reachM: runs?.stopM ?? null,
    stopEveryM: runs?.stopEveryM ?? null,
    ways: ways.map(({ how, reachM }) => ({ how, reachM, noLimit: reachM === null })),
    stopS: runs?.stopS ?? null,
    nozzleGelS: sheet.foam.nozzleGelS,
    nozzlesNeeded: nozzles?.needed ?? null,
    nozzlesPerKit: sheet.foam.nozzlesPerKit,
    nozzlesShort: nozzles?.short ?? null,
    gelsAtStops: nozzles?.gelsAtStops ?? null
  }
}
