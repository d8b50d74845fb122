import { within } from '../physics/range.js'
import { type Factor, type TakeoffItem, type TakeoffLine, wholeUp } from './takeoff/line.js'
import type { Takeoff } from './takeoff.js'

export interface Remaining {
  readonly item: TakeoffItem
  /** Still needed, of `unit`; never below 0. */
  readonly value: number
  readonly unit: TakeoffLine['unit']
  readonly sum: readonly Factor[]
}

const byArea: readonly TakeoffItem[] = ['rolls', 'bareBack', 'kits', 'nozzles', 'patches', 'cleaner']

/**
 * What of a takeoff remains after so many m² (≥ 0) of a roof (> 0) were logged as laid: each line by the share of the area that is
 * left, up to whole pieces. What is not laid with the sheets, bases and loads, is left out. RangeError outside.
 */
export function remaining(takeoff: Takeoff, roofM2: number, laidM2: number): readonly Remaining[] {
  within('laidM2', laidM2, 0, 1e9)
  within('roofM2', roofM2, Number.MIN_VALUE, 1e9)
  const leftM2 = Math.max(0, roofM2 - laidM2)
  return byArea.map((item) => {
    const { value, unit } = takeoff[item]
    const sum: readonly Factor[] = [
      { by: '', value, unit },
      { by: '×', value: leftM2, unit: 'm2' },
      { by: '÷', value: roofM2, unit: 'm2' }
    ]
    return { item, value: wholeUp((value * leftM2) / roofM2), unit, sum }
  })
}
