import type { Run } from './bands.js'
import { intersection } from './clip.js'
import { grouped } from './grouped.js'
import type { CoverStrip, SheetSizes } from './layout.js'
import { type Box, boxOfRegion, inPolygon, type Polygon, type Region, rectangle } from './polygon.js'
import { pointInside } from './spans.js'
import { steepEdges } from './steep.js'

/** The gap between two sheets, one part of it. */
export interface Gap {
  readonly course: number
  readonly atMm: number
  readonly polygon: Polygon
}

type StripBody = Omit<CoverStrip, 'number'> & { readonly gaps: readonly number[] }

/** A rectangle for each strip, and the gaps (by index) that it covers. Gaps in line whose strips would meet share one. */
export function coverStrips(gaps: readonly Gap[], runs: readonly Run[], sizes: SheetSizes): readonly StripBody[] {
  const byCourse = grouped(runs, ({ course }) => course)
  return inLine(gaps, sizes.pastLapMm).map((group) => stripOver(group, gaps, byCourse, sizes))
}

function inLine(gaps: readonly Gap[], pastLapMm: number): readonly (readonly number[])[] {
  const boxes = gaps.map(({ polygon }) => boxOfRegion([polygon]))
  const lines = grouped(gaps.keys(), (i) => (gaps[i] as Gap).atMm)
  return [...lines.values()].flatMap((line) => {
    const groups: number[][] = []
    let top = Number.NEGATIVE_INFINITY
    for (const i of [...line].sort((a, b) => (boxes[a] as Box).minY - (boxes[b] as Box).minY)) {
      const { minY, maxY } = boxes[i] as Box
      if (minY - pastLapMm <= top + pastLapMm) groups.at(-1)?.push(i)
      else groups.push([i])
      top = Math.max(top, maxY)
    }
    return groups
  })
}

function stripOver(group: readonly number[], gaps: readonly Gap[], byCourse: ReadonlyMap<number, readonly Run[]>, sizes: SheetSizes): StripBody {
  const over = group.map((i) => gaps[i] as Gap)
  const { atMm } = over[0] as Gap
  const gapBox = boxOfRegion(over.map(({ polygon }) => polygon))
  const half = sizes.stripWidthMm / 2
  const box = { minX: atMm - half, maxX: atMm + half, minY: gapBox.minY - sizes.pastLapMm, maxY: gapBox.maxY + sizes.pastLapMm }
  const region = onRoof(box, over, byCourse)
  const { minY, maxY } = boxOfRegion(region)
  const lengthMm = maxY - minY
  return {
    gaps: group,
    courses: [...new Set(over.map(({ course }) => course))],
    atMm,
    region,
    lengthMm,
    widthMm: sizes.stripWidthMm,
    landMm: landOf(region, box, gapBox, atMm, sizes),
    ...weldOf(lengthMm, sizes),
    edge: lengthMm < box.maxY - box.minY - 0.01
  }
}

/** Of the strip's rectangle what lies on the roof, in the parts that hold a gap. */
function onRoof(box: Box, over: readonly Gap[], byCourse: ReadonlyMap<number, readonly Run[]>): Region {
  const courses = over.map(({ course }) => course)
  const near: Polygon[] = []
  for (let course = Math.min(...courses) - 1; course <= Math.max(...courses) + 1; course += 1) {
    for (const run of byCourse.get(course) ?? []) {
      if (run.fromMm < box.maxX && run.toMm > box.minX && run.lowMm < box.maxY && run.highMm > box.minY) near.push(run.polygon)
    }
  }
  const inside = over.map(({ polygon }) => pointInside(polygon))
  return intersection(near, [rectangle(box)]).filter((polygon) => inside.some((point) => inPolygon(point, polygon)))
}

/** Half of what the gap leaves of the strip, less where an edge of the roof runs beside the gap. */
function landOf(region: Region, box: Box, gap: Box, atMm: number, { stripWidthMm, endGapMm }: SheetSizes): number {
  const beside = region
    .flatMap(steepEdges)
    .filter(({ fromX, toX, fromY, toY }) => toX > box.minX + 0.01 && fromX < box.maxX - 0.01 && fromY < gap.maxY && toY > gap.minY)
    .map(({ fromX, toX }) => Math.max(0, fromX - atMm, atMm - toX) - endGapMm / 2)
  return Math.max(0, Math.min((stripWidthMm - endGapMm) / 2, ...beside))
}

/** All round with rounded corners, as for a strip that is a rectangle. */
function weldOf(lengthMm: number, { stripWidthMm, cornerRadiusMm }: SheetSizes) {
  const radiusMm = Math.min(cornerRadiusMm, stripWidthMm / 2, lengthMm / 2)
  const weldPerimeterMm = 2 * (lengthMm + stripWidthMm) - (8 - 2 * Math.PI) * radiusMm
  const robotMm = 2 * (lengthMm - 2 * radiusMm)
  return { cornerRadiusMm: radiusMm, weldPerimeterMm, robotMm, handMm: weldPerimeterMm - robotMm }
}
