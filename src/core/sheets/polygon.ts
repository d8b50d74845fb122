/** A corner on the roof: mm to the right (east) and up the plan (north) of the roof's own origin. */
export type Point = readonly [xMm: number, yMm: number]

/** Corners in turn; the last joins the first and is not repeated. */
export type Ring = readonly Point[]

/** Outer ring anticlockwise, openings in it clockwise. */
export interface Polygon {
  readonly outer: Ring
  readonly holes: readonly Ring[]
}

/** Polygons that share at most corners. */
export type Region = readonly Polygon[]

export interface Box {
  readonly minX: number
  readonly minY: number
  readonly maxX: number
  readonly maxY: number
}

/** Area with its sign, mm²: above 0 anticlockwise (shoelace formula). Taken from the first corner, so that a far one loses no digits. */
export function ringAreaMm2(ring: Ring): number {
  const [x0, y0] = ring[0] ?? [0, 0]
  let twice = 0
  for (let i = 1; i + 1 < ring.length; i += 1) {
    const [x1, y1] = ring[i] as Point
    const [x2, y2] = ring[i + 1] as Point
    twice += (x1 - x0) * (y2 - y0) - (x2 - x0) * (y1 - y0)
  }
  return twice / 2
}

/** Area less its openings, mm². */
export function polygonAreaMm2({ outer, holes }: Polygon): number {
  return holes.reduce((area, hole) => area - Math.abs(ringAreaMm2(hole)), Math.abs(ringAreaMm2(outer)))
}

export function regionAreaMm2(region: Region): number {
  return region.reduce((area, polygon) => area + polygonAreaMm2(polygon), 0)
}

/** All rings of a polygon, the outer one first. */
export function ringsOf({ outer, holes }: Polygon): readonly Ring[] {
  return [outer, ...holes]
}

export function boxOf(points: Iterable<Point>): Box {
  let [minX, minY, maxX, maxY] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const [x, y] of points) {
    minX = Math.min(minX, x)
    minY = Math.min(minY, y)
    maxX = Math.max(maxX, x)
    maxY = Math.max(maxY, y)
  }
  return { minX, minY, maxX, maxY }
}

export function boxOfRegion(region: Region): Box {
  return boxOf(region.flatMap(({ outer }) => outer))
}

export function rectangle({ minX, minY, maxX, maxY }: Box): Polygon {
  const outer: Ring = [
    [minX, minY],
    [maxX, minY],
    [maxX, maxY],
    [minX, maxY]
  ]
  return { outer, holes: [] }
}

/** Whether a point is inside a ring, by the even-odd rule; on the boundary either may come out. */
export function inRing([x, y]: Point, ring: Ring): boolean {
  let inside = false
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i, i += 1) {
    const [xi, yi] = ring[i] as Point
    const [xj, yj] = ring[j] as Point
    if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) inside = !inside
  }
  return inside
}

export function inPolygon(point: Point, { outer, holes }: Polygon): boolean {
  return inRing(point, outer) && !holes.some((hole) => inRing(point, hole))
}

/** x and y exchanged, and the sense of every ring kept. */
export function turned({ outer, holes }: Polygon): Polygon {
  return { outer: turnedRing(outer), holes: holes.map(turnedRing) }
}

function turnedRing(ring: Ring): Ring {
  return ring.map(([x, y]): Point => [y, x]).reverse()
}
