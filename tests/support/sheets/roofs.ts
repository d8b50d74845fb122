import fc from 'fast-check'
import type { Along, SheetSizes } from '../../../src/core/sheets/layout.js'
import { notchedRectangle, outlineOf, outlineProblem } from '../../../src/core/sheets/outline.js'
import type { Point, Polygon, Ring } from '../../../src/core/sheets/polygon.js'

/** A generated roof and how it is to be laid. */
export interface Roof {
  readonly outline: Polygon
  readonly sizes: SheetSizes
  readonly along: Along | null
}

const mm = (min: number, max: number) => fc.integer({ min, max })

const rectangles = fc.tuple(mm(3100, 40_000), mm(3100, 40_000)).map(([width, depth]): Ring => notchedRectangle(width, depth, []))

const notched = fc
  .tuple(
    mm(8000, 40_000),
    mm(8000, 40_000),
    fc.uniqueArray(fc.constantFrom('sw', 'se', 'ne', 'nw'), { minLength: 1, maxLength: 4 }),
    fc.array(mm(10, 45), { minLength: 8, maxLength: 8 })
  )
  .map(([width, depth, corners, parts]): Ring => {
    const notches = corners.map((corner, i) => ({
      corner,
      widthMm: Math.round((width * (parts[2 * i] as number)) / 100),
      depthMm: Math.round((depth * (parts[2 * i + 1] as number)) / 100)
    }))
    return notchedRectangle(width, depth, notches)
  })

/** Corners round a middle at any distance: any simple polygon that can be seen from one point. */
const stars = fc
  .tuple(mm(5, 12), fc.array(mm(35, 100), { minLength: 12, maxLength: 12 }), mm(6000, 20_000), fc.double({ min: 0, max: 6, noNaN: true }))
  .map(
    ([count, reach, radius, turn]): Ring =>
      Array.from({ length: count }, (_, i): Point => {
        const angle = turn + (2 * Math.PI * i) / count
        const far = (radius * (reach[i] as number)) / 100
        return [Math.round(radius + far * Math.cos(angle)), Math.round(radius + far * Math.sin(angle))]
      })
  )

/** A side in steps, with teeth of any width: many courses with several parts. */
const combs = fc
  .tuple(fc.array(fc.tuple(mm(400, 6000), mm(2500, 16_000)), { minLength: 3, maxLength: 9 }), fc.boolean())
  .map(([steps, down]): Ring => {
    const tops: Point[] = []
    let x = 0
    for (const [width, height] of steps) {
      tops.push([x, height], [x + width, height])
      x += width
    }
    const plain = tops.filter(([, y], i) => y !== tops[i + 1]?.[1] || tops[i - 1]?.[1] !== y)
    const up: Ring = [[0, -3000], [x, -3000], ...plain.reverse()]
    return down ? up.map(([a, b]): Point => [a, -b]).reverse() : up
  })

interface Opening {
  readonly at: readonly [number, number]
  readonly size: readonly [number, number]
  readonly slanted: boolean
}

const openings = fc.array(
  fc.record({
    at: fc.tuple(mm(2, 95), mm(2, 95)),
    size: fc.tuple(mm(150, 5000), mm(150, 4000)),
    slanted: fc.boolean()
  }),
  { maxLength: 5 }
)

function opened(outer: Ring, wanted: readonly Opening[]): Polygon {
  const xs = outer.map(([x]) => x)
  const ys = outer.map(([, y]) => y)
  const place = (values: readonly number[], part: number) =>
    Math.round(Math.min(...values) + ((Math.max(...values) - Math.min(...values)) * part) / 100)
  let kept: readonly Ring[] = []
  for (const { at, size, slanted } of wanted) {
    const [x, y] = [place(xs, at[0]), place(ys, at[1])]
    const [w, h] = size
    const square: Ring = [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h]
    ]
    const diamond: Ring = [
      [x + Math.round(w / 2), y],
      [x + w, y + Math.round(h / 3)],
      [x + Math.round(w / 3), y + h],
      [x, y + Math.round(h / 2)]
    ]
    const next = [...kept, slanted ? diamond : square]
    if (outlineProblem({ outer, holes: next }) === null) kept = next
  }
  return outlineOf(outer, kept)
}

const sizes = fc.record({
  widthMm: fc.constantFrom(2000, 1500, 1050, 3000, 1524, 2133.6),
  rollMm: fc.constantFrom(20_000, 10_000, 15_000, 25_000, 30_480),
  lapMm: fc.constantFrom(80, 50, 120, 101.6),
  endGapMm: fc.constantFrom(6, 3, 10, 0.01),
  stripWidthMm: fc.constantFrom(150, 152.4, 200),
  pastLapMm: fc.constantFrom(75, 76.2, 100),
  cornerRadiusMm: fc.constant(25),
  patchFromLayers: fc.constantFrom(4, 3)
})

/** Rectangles, notched ones, stars and combs, with up to five openings of any size where they fit. */
export const roofs: fc.Arbitrary<Roof> = fc
  .record({
    outer: fc.oneof(rectangles, notched, stars, combs),
    openings,
    sizes,
    along: fc.constantFrom<Along | null>(null, null, 'x', 'y')
  })
  .map(({ outer, openings: wanted, ...how }) => ({ outline: opened(outer, wanted), ...how }))
  .filter(({ outline }) => outlineProblem(outline) === null)
