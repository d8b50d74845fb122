import { type Point, type Polygon, type Ring, ringsOf } from './polygon.js'

/** A side of a ring: `ring` 0 is the outer one, then the openings; `corner` from 0, its first. */
export interface Side {
  readonly ring: number
  readonly corner: number
}

export interface Meeting {
  readonly a: Side
  readonly b: Side
  readonly at: Point
}

interface Placed extends Side {
  readonly from: Point
  readonly to: Point
  readonly corners: number
}

/** Nearer than this two sides touch, mm: less than a roof is measured by. */
const touchMm = 1

/** The first two sides that cross or touch where they should not; null when the rings are simple and apart. */
export function meetingOf(polygon: Polygon): Meeting | null {
  const sides = ringsOf(polygon)
    .flatMap(sidesOf)
    .sort((a, b) => left(a) - left(b))
  let active: Placed[] = []
  for (const side of sides) {
    active = active.filter((other) => Math.max(other.from[0], other.to[0]) >= left(side) - touchMm)
    const met = active.find((other) => meet(other, side))
    if (met !== undefined) return inOrder(met, side)
    active.push(side)
  }
  return null
}

function sidesOf(ring: Ring, index: number): readonly Placed[] {
  return ring.map((from, corner): Placed => ({ ring: index, corner, from, to: ring[(corner + 1) % ring.length] as Point, corners: ring.length }))
}

function left({ from, to }: Placed): number {
  return Math.min(from[0], to[0])
}

function inOrder(a: Placed, b: Placed): Meeting {
  const [first, second] = a.ring < b.ring || (a.ring === b.ring && a.corner < b.corner) ? [a, b] : [b, a]
  return { a: sideOf(first), b: sideOf(second), at: second.from }
}

function sideOf({ ring, corner }: Placed): Side {
  return { ring, corner }
}

function meet(a: Placed, b: Placed): boolean {
  if (Math.max(a.from[1], a.to[1]) < Math.min(b.from[1], b.to[1]) - touchMm) return false
  if (Math.max(b.from[1], b.to[1]) < Math.min(a.from[1], a.to[1]) - touchMm) return false
  if (a.ring === b.ring && follows(a, b)) return foldsBack(a, b)
  if (a.ring === b.ring && follows(b, a)) return foldsBack(b, a)
  if (cross(a, b)) return true
  return [near(a.from, b), near(a.to, b), near(b.from, a), near(b.to, a)].some(Boolean)
}

function follows(a: Placed, b: Placed): boolean {
  return b.corner === (a.corner + 1) % a.corners
}

/** The second of two sides in turn runs back along the first. */
function foldsBack(a: Placed, b: Placed): boolean {
  return near(b.to, a) || near(a.from, b)
}

function cross(a: Placed, b: Placed): boolean {
  return turn(a, b.from) * turn(a, b.to) < 0 && turn(b, a.from) * turn(b, a.to) < 0
}

function turn({ from, to }: Placed, [x, y]: Point): number {
  return Math.sign((to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0]))
}

function near([x, y]: Point, { from, to }: Placed): boolean {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
  const along = Math.min(1, Math.max(0, ((x - from[0]) * dx + (y - from[1]) * dy) / (dx * dx + dy * dy)))
  return Math.hypot(from[0] + along * dx - x, from[1] + along * dy - y) < touchMm
}
