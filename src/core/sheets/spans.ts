import type { Point, Polygon, Region } from './polygon.js'
import { ringsOf } from './polygon.js'

/** A stretch of a line, mm. */
export type Span = readonly [from: number, to: number]

/** Where the line at a height lies inside polygons, left to right (even-odd rule). */
function spansAt(region: Region, yMm: number): readonly Span[] {
  const crossings = region
    .flatMap(ringsOf)
    .flatMap((ring) => ring.map((from, i) => crossing(from, ring[(i + 1) % ring.length] as Point, yMm)))
    .filter((x) => x !== null)
    .sort((a, b) => a - b)
  return Array.from({ length: Math.floor(crossings.length / 2) }, (_, i): Span => [crossings[2 * i] as number, crossings[2 * i + 1] as number])
}

function crossing([xa, ya]: Point, [xb, yb]: Point, y: number): number | null {
  return ya > y === yb > y ? null : xa + ((xb - xa) * (y - ya)) / (yb - ya)
}

/** A point well inside a polygon: on the line at half its height, in the middle of the widest span. */
export function pointInside(polygon: Polygon): Point {
  const ys = polygon.outer.map(([, y]) => y)
  const y = (Math.min(...ys) + Math.max(...ys)) / 2
  const [widest] = [...spansAt([polygon], y)].sort((a, b) => b[1] - b[0] - (a[1] - a[0]))
  return widest === undefined ? (polygon.outer[0] as Point) : [(widest[0] + widest[1]) / 2, y]
}

/** Spans in order, those that meet made one. */
export function merged(spans: readonly Span[]): readonly Span[] {
  const out: Span[] = []
  for (const [from, to] of [...spans].sort((a, b) => a[0] - b[0])) {
    const last = out.at(-1)
    if (last !== undefined && from <= last[1]) out[out.length - 1] = [last[0], Math.max(last[1], to)]
    else out.push([from, to])
  }
  return out
}

/** What is left of spans when others are taken out; both merged. */
export function without(spans: readonly Span[], taken: readonly Span[]): readonly Span[] {
  return spans.flatMap(([from, to]) => {
    const left: Span[] = []
    let at = from
    for (const [a, b] of taken) {
      if (b <= at || a >= to) continue
      if (a > at) left.push([at, a])
      at = Math.max(at, b)
    }
    return at < to ? [...left, [at, to] as const] : left
  })
}
