import { above, within } from '../physics/range.js'

export interface StagingQuestion {
  /** m² to be laid that day, 0…1e6. */
  readonly areaM2: number
  /** m² a kit gives, > 0…1e4. */
  readonly yieldM2PerKit: number
  /** From cold to ready by the slow bound, min, 0…1e5. */
  readonly warmMin: number
  /** From one kit to the next, min, > 0…1e5. */
  readonly useIntervalMin: number
}

export interface Staging {
  /** Kits of the day. */
  readonly need: number
  /** Kits that must be warming at the same time so that one is ready whenever one is used up; never more than the need. */
  readonly warming: number
}

/** Kits to stage: at once ceil(warm time ÷ use interval) + 1, in the day ceil(area ÷ yield). Common practice, no source. RangeError outside. */
export function stageKits({ areaM2, yieldM2PerKit, warmMin, useIntervalMin }: StagingQuestion): Staging {
  within('areaM2', areaM2, 0, 1e6)
  above('yieldM2PerKit', yieldM2PerKit, 0, 1e4)
  within('warmMin', warmMin, 0, 1e5)
  above('useIntervalMin', useIntervalMin, 0, 1e5)
  const need = wholeUp(areaM2 / yieldM2PerKit)
  return { need, warming: Math.min(need, wholeUp(warmMin / useIntervalMin) + 1) }
}

/** Up to the next whole number, but not for the last digit of a division. */
function wholeUp(value: number): number {
  return Math.max(0, Math.ceil(value - 1e-9))
}
