import { type Point, type Polygon, type Ring, ringsOf } from './polygon.js'
import type { Span } from './spans.js'

export interface Edge {
  readonly fromX: number
  readonly toX: number
  readonly fromY: number
  readonly toY: number
}

/** Beside what a joint has too little land: edges that rise more than they run, and corners that point along the sheets. */
export function steepEdges(polygon: Polygon): readonly Edge[] {
  return ringsOf(polygon).flatMap((ring) => [...ring.map((from, i) => edgeOf(from, nextOf(ring, i))).filter(isSteep), ...noses(ring)])
}

function nextOf(ring: Ring, i: number): Point {
  return ring[(i + 1) % ring.length] as Point
}

function edgeOf([xa, ya]: Point, [xb, yb]: Point): Edge {
  return { fromX: Math.min(xa, xb), toX: Math.max(xa, xb), fromY: Math.min(ya, yb), toY: Math.max(ya, yb) }
}

function isSteep({ fromX, toX, fromY, toY }: Edge): boolean {
  return toX - fromX < toY - fromY
}

/** Corners both of whose sides lead away to the same side. */
function noses(ring: Ring): readonly Edge[] {
  return ring
    .filter(([x], i) => {
      const [[before], [after]] = [ring[(i + ring.length - 1) % ring.length] as Point, nextOf(ring, i)]
      return (before < x && after < x) || (before > x && after > x)
    })
    .map((corner) => edgeOf(corner, corner))
}

/** Where a joint is nearer than `reachMm` to one of the edges, all along their run. */
export function besideEdges(edges: readonly Edge[], reachMm: number): readonly Span[] {
  return edges.map(({ fromX, toX }): Span => [fromX - reachMm, toX + reachMm])
}
