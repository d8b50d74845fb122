import type { CoverStrip, Layout } from '../../src/core/sheets/layout.js'
import type { Polygon, Ring } from '../../src/core/sheets/polygon.js'

/** A rectangle in mm, anticlockwise. */
export function box(minX: number, minY: number, maxX: number, maxY: number): Ring {
  return [
    [minX, minY],
    [maxX, minY],
    [maxX, maxY],
    [minX, maxY]
  ]
}

export function strip(number: number, lengthMm: number): CoverStrip {
  const [widthMm, cornerRadiusMm] = [150, 25]
  return {
    ...{ number, courses: [1], atMm: 0, region: [], lengthMm, widthMm, landMm: 72, cornerRadiusMm },
    ...{ weldPerimeterMm: 2 * (lengthMm + widthMm), robotMm: 2 * lengthMm, handMm: 2 * widthMm, edge: false }
  }
}

/** A roof with nothing on it but what a test says. */
export function bareLayout(outline: Polygon, areaMm2: number, more: Partial<Layout> = {}): Layout {
  return {
    outline,
    along: 'x',
    sizes: {
      ...{ widthMm: 2000, rollMm: 20_000, lapMm: 80, endGapMm: 6 },
      ...{ stripWidthMm: 150, pastLapMm: 75, cornerRadiusMm: 25, patchFromLayers: 4 }
    },
    ...{ courses: 0, pieces: [], seams: [], joints: [], strips: [], patches: [], handPress: [], rolls: [], leastRolls: 0, offcuts: [] },
    areaMm2,
    ...more
  }
}
