import type { CoverStrip, HandPress } from './layout.js'
import { boxOfRegion, inPolygon, type Point } from './polygon.js'
import { type Laps, lastAtMost } from './seams.js'

/** Where the long edges of strips step over the visible edge of a lap: there the roller bridges, and a hand has to press. */
export function handPressed(strips: readonly CoverStrip[], { seams }: Laps, lowsMm: readonly number[]): readonly HandPress[] {
  return strips.flatMap(({ number, region, atMm, widthMm }) => {
    const { minY, maxY } = boxOfRegion(region)
    const places: HandPress[] = []
    for (let course = lastAtMost(lowsMm, minY) + 1; course <= lastAtMost(lowsMm, maxY) + 1; course += 1) {
      const y = lowsMm[course - 1] as number
      if (!(y > minY && y < maxY)) continue
      for (const side of [-1, 1]) {
        const at: Point = [atMm + (side * widthMm) / 2, y]
        const justInside: Point = [at[0] - side, y]
        const lapped = (seams.get(course) ?? []).some(([from, to]) => from < at[0] && at[0] < to)
        if (lapped && region.some((polygon) => inPolygon(justInside, polygon))) places.push({ strip: number, at })
      }
    }
    return places
  })
}
