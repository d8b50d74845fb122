import { snapped } from './clip.js'
import type { SheetSizes } from './layout.js'
import { meetingOf, type Side } from './meeting.js'
import { boxOf, inRing, type Point, type Polygon, polygonAreaMm2, type Ring, ringAreaMm2, ringsOf } from './polygon.js'

/** What is wrong with an outline, and where: ring 0 is the roof, then the openings; corner from 0. */
export type OutlineProblem =
  | { readonly what: 'corners-few' | 'side-short' | 'flat' | 'far'; readonly ring: number; readonly corner: number }
  | { readonly what: 'corners-many'; readonly most: number }
  | { readonly what: 'area-large'; readonly mostM2: number }
  | { readonly what: 'crossing' | 'meets-edge' | 'meets-opening'; readonly a: Side; readonly b: Side; readonly at: Point }
  | { readonly what: 'outside' | 'within-opening'; readonly ring: number; readonly other: number }

/** What is laid out at all: farther or more would not be answered in time. */
const outlineMost = { corners: 10_000, areaM2: 100_000, sideM: 1000 } as const

const shortestMm = 10
const leastMm2 = 1e4

/** An outline with its rings in their sense (roof anticlockwise, openings clockwise) on the grid of the clipping. */
export function outlineOf(outer: Ring, openings: readonly Ring[]): Polygon {
  return { outer: inSense(outer, 1), holes: openings.map((opening) => inSense(opening, -1)) }
}

function inSense(ring: Ring, sense: 1 | -1): Ring {
  const points = ring.map(([x, y]): Point => [snapped(x), snapped(y)])
  return ringAreaMm2(points) * sense < 0 ? [points[0] as Point, ...points.slice(1).reverse()] : points
}

/** The first thing wrong with an outline as it was said; null when it can be laid out. Coordinates are finite. */
export function outlineProblem(polygon: Polygon): OutlineProblem | null {
  const rings = ringsOf(polygon)
  if (rings.reduce((sum, ring) => sum + ring.length, 0) > outlineMost.corners) return { what: 'corners-many', most: outlineMost.corners }
  return rings.map(ringProblem).find((problem) => problem !== null) ?? meetingProblem(polygon) ?? placeProblem(rings) ?? areaProblem(polygon)
}

function ringProblem(points: Ring, ring: number): OutlineProblem | null {
  if (points.length < 3) return { what: 'corners-few', ring, corner: 0 }
  const far = points.findIndex(([x, y]) => !(Math.abs(x) <= outlineMost.sideM * 1000 && Math.abs(y) <= outlineMost.sideM * 1000))
  if (far >= 0) return { what: 'far', ring, corner: far }
  const short = points.findIndex(([x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length] as Point
    return Math.hypot(nextX - x, nextY - y) < shortestMm
  })
  return short < 0 ? null : { what: 'side-short', ring, corner: short }
}

function meetingProblem(polygon: Polygon): OutlineProblem | null {
  const met = meetingOf(polygon)
  if (met === null) return null
  const what = met.a.ring === met.b.ring ? 'crossing' : met.a.ring === 0 ? 'meets-edge' : 'meets-opening'
  return { what, ...met }
}

/** The rings neither cross nor touch here: one corner tells where a ring is. */
function placeProblem([outer = [], ...openings]: readonly Ring[]): OutlineProblem | null {
  const outside = openings.findIndex(([corner]) => corner !== undefined && !inRing(corner, outer))
  if (outside >= 0) return { what: 'outside', ring: outside + 1, other: 0 }
  for (const [i, [corner]] of openings.entries()) {
    const other = openings.findIndex((opening, j) => i !== j && corner !== undefined && inRing(corner, opening))
    if (other >= 0) return { what: 'within-opening', ring: i + 1, other: other + 1 }
  }
  return null
}

function areaProblem(polygon: Polygon): OutlineProblem | null {
  const flat = ringsOf(polygon).findIndex((ring) => !(Math.abs(ringAreaMm2(ring)) >= leastMm2))
  if (flat >= 0) return { what: 'flat', ring: flat, corner: 0 }
  return polygonAreaMm2(polygon) > outlineMost.areaM2 * 1e6 ? { what: 'area-large', mostM2: outlineMost.areaM2 } : null
}

export type CornerName = 'sw' | 'se' | 'ne' | 'nw'

/** What is cut off a corner of a rectangle. */
export interface Notch {
  readonly corner: CornerName
  readonly widthMm: number
  readonly depthMm: number
}

/** A rectangle from 0,0 with notches cut out of its corners, at most one of each. */
export function notchedRectangle(widthMm: number, depthMm: number, notches: readonly Notch[]): Ring {
  return (['sw', 'se', 'ne', 'nw'] as const).flatMap((corner): Ring => {
    const [x, y] = [corner.endsWith('e') ? widthMm : 0, corner.startsWith('n') ? depthMm : 0]
    const notch = notches.find((one) => one.corner === corner)
    if (notch === undefined) return [[x, y]]
    const inX = Math.abs(x - notch.widthMm)
    const inY = Math.abs(y - notch.depthMm)
    const [beside, above]: readonly [Point, Point] = [
      [inX, y],
      [x, inY]
    ]
    return corner === 'sw' || corner === 'ne' ? [above, [inX, inY], beside] : [beside, [inX, inY], above]
  })
}

/** Plan sizes of a rectangle with its sides along x and y, whatever openings are in it; null for any other shape. */
export function rectangleSize({ outer }: Polygon): { readonly widthMm: number; readonly depthMm: number } | null {
  const { minX, maxX, minY, maxY } = boxOf(outer)
  const [widthMm, depthMm] = [maxX - minX, maxY - minY]
  return Math.abs(ringAreaMm2(outer) - widthMm * depthMm) < 1 ? { widthMm, depthMm } : null
}

/** More than this many sheets and parts of courses would not be laid out in time. */
export const mostSheets = 10_000

/** At most about so many sheets and parts of courses, whichever way they lie. */
export function sheetsAbout(polygon: Polygon, { widthMm, lapMm, rollMm }: Pick<SheetSizes, 'widthMm' | 'lapMm' | 'rollMm'>): number {
  const { minX, maxX, minY, maxY } = boxOf(polygon.outer)
  const corners = ringsOf(polygon).reduce((sum, ring) => sum + ring.length, 0)
  const coverMm = widthMm - lapMm
  return polygonAreaMm2(polygon) / (coverMm * rollMm) + (Math.max(maxX - minX, maxY - minY) / coverMm) * (1 + corners / 8)
}
