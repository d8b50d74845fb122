import { stageKits } from '../kits/staging.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { above, within } from '../physics/range.js'
import { rollAreaM2, type SheetSizes } from './work.js'

export interface StageQuestion {
  /** To be laid, 0…1e6 m². */
  readonly areaM2: number
  readonly foam: Pick<LimitsSheet['foam'], 'yieldM2PerKit' | 'nozzlesPerKit'>
  readonly sizes: SheetSizes
  /** From cold to ready of a kit, 0…1e5 min; null: not known. */
  readonly warmMin: number | null
  /** As `paceM2H`, > 0…1e6 m²/h. */
  readonly paceM2H: number
}

export interface Staged {
  readonly what: 'kits' | 'nozzles' | 'strips'
  readonly count: number
  /** Of the kits: how many must be warming at once; null for anything else and where the time of warming is not known. */
  readonly warming: number | null
}

/**
 * What to have on the roof for an area: kits = ceil(area ÷ yield), nozzles = ceil(kits × nozzles of a kit), strips = one for each
 * roll length begun, so at most as many as end joints there can be. Nothing for no area. Common practice, no source. RangeError
 * outside.
 */
export function stage({ areaM2, foam, sizes, warmMin, paceM2H }: StageQuestion): readonly Staged[] {
  within('areaM2', areaM2, 0, 1e6)
  within('nozzlesPerKit', foam.nozzlesPerKit, 0, 1e6)
  above('paceM2H', paceM2H, 0, 1e6)
  const useIntervalMin = Math.min(1e5, (foam.yieldM2PerKit / paceM2H) * 60)
  const { need, warming } = stageKits({ areaM2, yieldM2PerKit: foam.yieldM2PerKit, warmMin: warmMin ?? 0, useIntervalMin })
  if (need === 0) return []
  const counts: readonly Staged[] = [
    { what: 'kits', count: need, warming: warmMin === null ? null : warming },
    { what: 'nozzles', count: wholeUp(need * foam.nozzlesPerKit), warming: null },
    { what: 'strips', count: wholeUp(areaM2 / rollAreaM2(sizes)), warming: null }
  ]
  return counts.filter(({ count }) => count > 0)
}

/** Up to the next whole number, but not for the last digit of a division. */
function wholeUp(value: number): number {
  return Math.ceil(value - 1e-9)
}
