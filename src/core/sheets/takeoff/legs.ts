import type { Layout } from '../layout.js'
import type { Point, Ring } from '../polygon.js'
import { ringsOf } from '../polygon.js'

/** One straight base of a parapet (ring 0) or of a curb or penetration (ring 1 … the openings in their order). */
export interface Leg {
  readonly ring: number
  readonly lengthM: number
}

/** Every straight base of a roof; corners on a straight line part no leg. */
export function legsOf({ outline }: Pick<Layout, 'outline'>): readonly Leg[] {
  return ringsOf(outline).flatMap((ring, index) => straightLengths(ring).map((lengthMm) => ({ ring: index, lengthM: lengthMm / 1000 })))
}

function straightLengths(ring: Ring): readonly number[] {
  const corners = ring.filter((corner, index) => turns(ring.at(index - 1) as Point, corner, ring[(index + 1) % ring.length] as Point))
  return corners.map(([x, y], index) => {
    const [toX, toY] = corners[(index + 1) % corners.length] as Point
    return Math.hypot(toX - x, toY - y)
  })
}

/** Less than 1 µm off the line from the corner before to the one after is no turn. */
function turns([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): boolean {
  const across = Math.abs((bx - ax) * (cy - ay) - (by - ay) * (cx - ax))
  return across > 1e-3 * Math.hypot(cx - ax, cy - ay)
}
