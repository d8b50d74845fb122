import { describe, expect, it } from 'vitest'
import type { Run } from '../../../src/core/sheets/bands.js'
import { coverStrips, type Gap } from '../../../src/core/sheets/cover-strips.js'
import { type Polygon, rectangle } from '../../../src/core/sheets/polygon.js'

const sizes = {
  ...{ widthMm: 2000, rollMm: 20_000, lapMm: 80, endGapMm: 6 },
  ...{ stripWidthMm: 150, pastLapMm: 75, cornerRadiusMm: 25, patchFromLayers: 4 }
}

/** Courses of 10 m one above another, as they lie. */
const runs = [1, 2, 3].map((course): Run => {
  const [lowMm, highMm] = [(course - 1) * 1920, (course - 1) * 1920 + 2000]
  return { course, fromMm: 0, toMm: 10_000, lowMm, highMm, polygon: rectangle({ minX: 0, maxX: 10_000, minY: lowMm, maxY: highMm }) }
})

function gap(course: number, atMm: number): Gap {
  const { lowMm, highMm } = runs[course - 1] as Run
  const polygon: Polygon = rectangle({ minX: atMm - 3, maxX: atMm + 3, minY: lowMm, maxY: highMm })
  return { course, atMm, polygon }
}

describe('cover strips over joints', () => {
  // N·W − (N − 1)·lap + 150, at an edge + 75: outside contract §6.
  it.each([
    ['an inner sheet', [gap(2, 5000)], [2150]],
    ['an edge sheet', [gap(1, 5000)], [2075]],
    ['two in line, one at the edge', [gap(1, 5000), gap(2, 5000)], [2 * 2000 - 80 + 75]],
    ['all three in line', [gap(1, 5000), gap(2, 5000), gap(3, 5000)], [3 * 2000 - 2 * 80]],
    ['two that are not in line', [gap(2, 5000), gap(3, 5300)], [2150, 2075]]
  ])('%s', (_, gaps, lengths) => {
    const strips = coverStrips(gaps, runs, sizes)
    expect(strips.map(({ lengthMm }) => Math.round(lengthMm * 1000) / 1000)).toEqual(lengths)
    expect(strips.flatMap((strip) => strip.gaps)).toEqual(gaps.map((_gap, i) => i))
  })

  it('an edge beside the gap takes land away', () => {
    const [strip] = coverStrips([gap(1, 40)], runs, sizes)
    // The roof ends 40 mm from the middle of the gap: 37 mm are left on that side.
    expect(strip).toMatchObject({ landMm: 37, edge: true })
  })
})
