import { above, within } from '../physics/range.js'
import { round6 } from '../units.js'

/**
 * Courses of sheets (width > 0…100 m) side by side over a roof of `widthM` (> 0…10,000 m): ceil((B − lap)/(W − lap)), at
 * least 1. The lap, ≥ 0 mm, is at least 1 mm narrower than the sheet. RangeError outside. Geometry, no source.
 */
export function courseCount(widthM: number, sheetM: number, lapMm: number): number {
  above('widthM', widthM, 0, 10_000)
  above('sheetM', sheetM, 0, 100)
  within('lapMm', lapMm, 0, sheetM * 1000 - 1)
  const lapM = lapMm / 1000
  return Math.max(1, Math.ceil(round6((widthM - lapM) / (sheetM - lapM))))
}
