import type { Layout } from './layout.js'

export interface Totals {
  readonly areaM2: number
  /** Of the sheet that was bought, what does not come to lie on the roof. */
  readonly wastePct: number
  readonly stripMm: number
  readonly sideLapM: number
  /** Side laps and the straight runs of the strips. */
  readonly robotWeldM: number
  /** Corners and ends of the strips, and all round the patches. */
  readonly handWeldM: number
}

/** Sums over a layout. Geometry, no source; by robot and by hand as a strip alone is parted. */
export function totalsOf({ areaMm2, sizes, rolls, offcuts, strips, patches, seams }: Layout): Totals {
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
  const sideLapMm = sum(seams.map(({ from, to }) => Math.hypot(to[0] - from[0], to[1] - from[1])))
  return {
    areaM2: areaMm2 / 1e6,
    wastePct: (100 * sum(offcuts.map((offcut) => offcut.areaMm2))) / (rolls.length * sizes.rollMm * sizes.widthMm),
    stripMm: sum(strips.map(({ lengthMm }) => lengthMm)),
    sideLapM: sideLapMm / 1000,
    robotWeldM: (sideLapMm + sum(strips.map(({ robotMm }) => robotMm))) / 1000,
    handWeldM: (sum(strips.map(({ handMm }) => handMm)) + sum(patches.map(({ weldPerimeterMm }) => weldPerimeterMm))) / 1000
  }
}
