import { above, within } from '../physics/range.js'
import { round6 } from '../units.js'

/** Largest distance of the first fastener from the corner: half the spacing, 150 mm at most. Common practice, no source. */
export function largestFirstMm(spacingMm: number): number {
  return Math.min(spacingMm / 2, 150)
}

/**
 * Fasteners along one leg (> 0…10,000 m) of a parapet, curb or penetration: ceil((L − 2a)/s) + 1, the first at `firstMm`
 * (0 … `largestFirstMm`) from each corner, `spacingMm` > 0…10,000 apart at most. One in a leg shorter than 2a. RangeError outside.
 * Common practice, no source.
 */
export function fastenersOnLeg(legM: number, spacingMm: number, firstMm: number): number {
  above('legM', legM, 0, 10_000)
  above('spacingMm', spacingMm, 0, 10_000)
  within('firstMm', firstMm, 0, largestFirstMm(spacingMm))
  // Rounded first: 3.3 m in 300 mm steps must not need one more because of the last binary digit.
  return Math.max(0, Math.ceil(round6((legM * 1000 - 2 * firstMm) / spacingMm))) + 1
}
