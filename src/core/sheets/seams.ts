import type { Bands } from './bands.js'
import { intersection } from './clip.js'
import { grouped } from './grouped.js'
import { boxOfRegion, type Point, type Polygon, type Region, ringsOf } from './polygon.js'
import { merged, type Span, without } from './spans.js'

/** Side laps: the visible edges by upper course, and where two courses lie over each other by upper course. */
export interface Laps {
  readonly seams: ReadonlyMap<number, readonly Span[]>
  readonly overlaps: ReadonlyMap<number, Region>
}

/** Rounding of the clipping grid, mm. */
const slackMm = 1e-4

/** Where the courses lap and where the low edges of the upper sheets show. An edge of the roof in the same line is no seam. */
export function lapsOf(outline: Polygon, bands: Bands): Laps {
  const [even, odd] = [0, 1].map((rest) => bands.runs.filter(({ course }) => course % 2 === rest).map(({ polygon }) => polygon))
  const laps = intersection(even as Region, odd as Region)
  const overlaps = grouped(laps, (polygon) => upperCourse(boxOfRegion([polygon]), bands.lowsMm))
  const edges = levelEdges([outline], bands.lowsMm)
  const seams = new Map<number, readonly Span[]>()
  for (const [course, region] of overlaps) {
    const low = bands.lowsMm[course - 1] as number
    const lapEdges = merged(levelEdges(region, [low]).get(low) ?? [])
    seams.set(course, without(lapEdges, merged(edges.get(low) ?? [])))
  }
  return { seams, overlaps }
}

/** A lap lies just above the low edge of its upper course: the last course that begins below its middle. */
function upperCourse({ minY, maxY }: { readonly minY: number; readonly maxY: number }, lowsMm: readonly number[]): number {
  return lastAtMost(lowsMm, (minY + maxY) / 2) + 1
}

/** Index of the last of some rising numbers that is not above a value; 0 when all are. */
export function lastAtMost(rising: readonly number[], value: number): number {
  let [low, high] = [0, rising.length - 1]
  while (low < high) {
    const half = Math.ceil((low + high) / 2)
    if ((rising[half] as number) <= value) low = half
    else high = half - 1
  }
  return low
}

/** Level edges of polygons that lie in one of the lines, by line. */
function levelEdges(region: Region, lines: readonly number[]): ReadonlyMap<number, readonly Span[]> {
  const found = new Map<number, Span[]>()
  for (const ring of region.flatMap(ringsOf)) {
    for (const [i, [xa, ya]] of ring.entries()) {
      const [xb, yb] = ring[(i + 1) % ring.length] as Point
      const line = lines[lastAtMost(lines, ya + slackMm)] as number
      if (Math.abs(ya - line) > slackMm || Math.abs(yb - line) > slackMm) continue
      found.set(line, [...(found.get(line) ?? []), [Math.min(xa, xb), Math.max(xa, xb)]])
    }
  }
  return found
}
