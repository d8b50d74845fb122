import { type Point, type Polygon, ringsOf } from './polygon.js'
import type { Span } from './spans.js'

export interface Edge {
  readonly fromX: number
  readonly toX: number
  readonly fromY: number
  readonly toY: number
}

/** Edges of a polygon that rise more than they run: those beside which a joint has too little land. */
export function steepEdges(polygon: Polygon): readonly Edge[] {
  return ringsOf(polygon).flatMap((ring) =>
    ring.map((from, i) => edgeOf(from, ring[(i + 1) % ring.length] as Point)).filter(({ fromX, toX, fromY, toY }) => toX - fromX < toY - fromY)
  )
}

function edgeOf([xa, ya]: Point, [xb, yb]: Point): Edge {
  return { fromX: Math.min(xa, xb), toX: Math.max(xa, xb), fromY: Math.min(ya, yb), toY: Math.max(ya, yb) }
}

/** Where a joint is nearer than `reachMm` to one of the edges, all along their run. */
export function besideEdges(edges: readonly Edge[], reachMm: number): readonly Span[] {
  return edges.map(({ fromX, toX }): Span => [fromX - reachMm, toX + reachMm])
}
