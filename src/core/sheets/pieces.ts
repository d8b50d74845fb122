import type { Run } from './bands.js'
import { intersection } from './clip.js'
import { grouped } from './grouped.js'
import { boxOfRegion, type Polygon, type Region, rectangle } from './polygon.js'
import type { Span } from './spans.js'

/** The parts of a run that lie in each of some spans along it; the spans are in order and do not touch. */
export function partsOf(run: Run, spans: readonly Span[]): readonly Region[] {
  const whole = spans.length === 1 && (spans[0] as Span)[0] <= run.fromMm && (spans[0] as Span)[1] >= run.toMm
  if (whole) return [[run.polygon]]
  if (spans.length === 0) return []
  const rectangles = spans.map(([minX, maxX]) => rectangle({ minX, maxX, minY: run.lowMm, maxY: run.highMm }))
  const found = grouped(intersection([run.polygon], rectangles), (polygon) => spanOf(polygon, spans))
  return spans.map((_, i) => found.get(i) ?? [])
}

function spanOf(polygon: Polygon, spans: readonly Span[]): number {
  const { minX, maxX } = boxOfRegion([polygon])
  const middle = (minX + maxX) / 2
  return spans.findIndex(([from, to]) => from <= middle && middle <= to)
}
