import { describe, expect, it } from 'vitest'
import { layOut } from '../../../src/core/sheets/lay-out.js'
import { notchedRectangle, outlineOf, outlineProblem, rectangleSize } from '../../../src/core/sheets/outline.js'
import type { Ring } from '../../../src/core/sheets/polygon.js'
import { sizesProblem } from '../../../src/core/sheets/sizes.js'

const sizes = {
  ...{ widthMm: 2000, rollMm: 20_000, lapMm: 80, endGapMm: 6 },
  ...{ stripWidthMm: 150, pastLapMm: 75, cornerRadiusMm: 25, patchFromLayers: 4 }
}
const roof = notchedRectangle(24_000, 36_000, [])

function box(x: number, y: number, width: number, depth: number): Ring {
  return notchedRectangle(width, depth, []).map(([a, b]) => [a + x, b + y])
}

describe('what is wrong with an outline, and where', () => {
  it.each<[string, Ring, readonly Ring[], object | null]>([
    ['nothing', roof, [], null],
    ['nothing, clockwise with two openings', [...roof].reverse(), [box(5000, 9000, 2000, 1200), box(9000, 9000, 500, 500)], null],
    ['two corners', roof.slice(0, 2), [], { what: 'corners-few', ring: 0 }],
    [
      'a bow tie',
      [
        [0, 0],
        [9000, 0],
        [0, 9000],
        [9000, 9000]
      ],
      [],
      { what: 'crossing', a: { ring: 0, corner: 1 }, b: { ring: 0, corner: 3 } }
    ],
    [
      'a spike',
      [
        [0, 0],
        [9000, 0],
        [9000, 9000],
        [9000, 3000],
        [0, 3000]
      ],
      [],
      { what: 'crossing' }
    ],
    [
      'a corner on a side',
      [
        [0, 0],
        [9000, 0],
        [9000, 9000],
        [4000, 0],
        [0, 9000]
      ],
      [],
      { what: 'crossing' }
    ],
    [
      'a short side',
      [
        [0, 0],
        [9000, 0],
        [9000, 5],
        [0, 9000]
      ],
      [],
      { what: 'side-short', ring: 0, corner: 1 }
    ],
    [
      'no number',
      [
        [0, 0],
        [Number.NaN, 0],
        [9000, 9000]
      ],
      [],
      { what: 'far', ring: 0, corner: 1 }
    ],
    [
      'too far',
      [
        [0, 0],
        [1_000_001, 0],
        [9000, 9000]
      ],
      [],
      { what: 'far', ring: 0, corner: 1 }
    ],
    ['an opening outside', roof, [box(30_000, 9000, 2000, 1000)], { what: 'outside', ring: 1 }],
    ['an opening round the roof', roof, [box(-1000, -1000, 50_000, 50_000)], { what: 'outside', ring: 1 }],
    ['an opening over the edge', roof, [box(23_000, 9000, 2000, 1000)], { what: 'meets-edge' }],
    ['an opening on the edge', roof, [box(22_000, 9000, 2000, 1000)], { what: 'meets-edge' }],
    [
      'openings that touch',
      roof,
      [box(5000, 9000, 2000, 1000), box(7000, 9000, 2000, 1000)],
      { what: 'meets-opening', a: { ring: 1 }, b: { ring: 2 } }
    ],
    ['an opening in an opening', roof, [box(5000, 9000, 4000, 4000), box(6000, 10_000, 500, 500)], { what: 'within-opening', ring: 2, other: 1 }],
    ['too large', notchedRectangle(400_000, 900_000, []), [], { what: 'area-large' }]
  ])('%s', (_, outer, holes, problem) => {
    const found = outlineProblem({ outer, holes })
    if (problem === null) expect(found).toBeNull()
    else expect(found).toMatchObject(problem)
  })

  it('10,001 corners are too many, 10,000 on a circle are not', () => {
    const circle = (count: number): Ring =>
      Array.from({ length: count }, (_, i) => [50_000 * Math.cos((2 * Math.PI * i) / count), 50_000 * Math.sin((2 * Math.PI * i) / count)])
    expect(outlineProblem({ outer: circle(10_000), holes: [] })).toBeNull()
    expect(outlineProblem({ outer: circle(10_001), holes: [] })).toMatchObject({ what: 'corners-many', most: 10_000 })
  })

  it('only a rectangle has a size', () => {
    expect(rectangleSize(outlineOf(roof, [box(5000, 9000, 2000, 1000)]))).toEqual({ widthMm: 24_000, depthMm: 36_000 })
    expect(rectangleSize(outlineOf(notchedRectangle(24_000, 36_000, [{ corner: 'ne', widthMm: 1, depthMm: 1 }]), []))).toBeNull()
  })
})

describe('sizes that cannot be laid', () => {
  it.each([
    [{}, null],
    [{ lapMm: 999 }, null],
    [{ lapMm: 1000 }, 'lap-wide'],
    [{ lapMm: -1 }, 'lap-wide'],
    [{ lapMm: Number.NaN }, 'lap-wide'],
    [{ rollMm: 999 }, 'roll-short'],
    [{ endGapMm: 150 }, 'gap-wide'],
    [{ patchFromLayers: 2 }, 'patch-layers']
  ])('%o: %s', (change, what) => {
    expect(sizesProblem({ ...sizes, ...change })?.what ?? null).toBe(what)
  })

  it('a sheet wider than the roof lies the other way, or not at all', () => {
    const narrow = outlineOf(notchedRectangle(1500, 36_000, []), [])
    expect(layOut(narrow, sizes, null)?.along).toBe('x')
    expect(layOut(narrow, sizes, 'y')).toBeNull()
  })
})

describe('patches and places to press, by hand', () => {
  it('from three layers each strip has one over every lap it crosses, the stack and 75 mm past it', () => {
    const layout = layOut(outlineOf(roof, []), { ...sizes, patchFromLayers: 3 }, 'x')

    // 19 strips cross two laps each, the first and the last course's one: 17 × 2 + 2.
    expect(layout?.patches).toHaveLength(36)
    const [patch] = layout?.patches ?? []
    // The stack is the strip's width by the lap; all round it 75 mm. Corners of 25 mm.
    expect(patch?.weldPerimeterMm).toBeCloseTo(2 * (150 + 80 + 4 * 75) - (8 - 2 * Math.PI) * 25, 6)
    expect(patch?.at[1]).toBeCloseTo(1920 + 40, 6)
  })
})
