import { intersection, snapped } from './clip.js'
import { courseCount } from './courses.js'
import { grouped } from './grouped.js'
import type { SheetSizes } from './layout.js'
import { boxOf, boxOfRegion, inPolygon, type Polygon, polygonAreaMm2, rectangle } from './polygon.js'
import { pointInside } from './spans.js'

/** One connected part of a course, before it is cut into sheets. Frame of the layout: x along the sheets, y up the courses. */
export interface Run {
  /** From 1. */
  readonly course: number
  readonly polygon: Polygon
  readonly fromMm: number
  readonly toMm: number
  readonly lowMm: number
  readonly highMm: number
}

/** Courses of a roof, from the low side up. */
export interface Bands {
  readonly count: number
  /** Low edge of each course. */
  readonly lowsMm: readonly number[]
  readonly runs: readonly Run[]
}

/** A part smaller than this, mm², is none. */
const leastMm2 = 0.01

/** A step of the clipping grid and rounding, mm. */
const slackMm = 1e-4

/**
 * The courses of an outline and what of it lies in each. A part that the course beside it covers whole within their lap is left out.
 * The lap is less than half the sheet, so that no more than two courses lie over each other.
 */
export function bandsOf(outline: Polygon, { widthMm, lapMm }: Pick<SheetSizes, 'widthMm' | 'lapMm'>): Bands {
  const box = boxOf(outline.outer)
  const count = courseCount((box.maxY - box.minY) / 1000, widthMm / 1000, lapMm)
  const lowsMm = Array.from({ length: count }, (_, k) => snapped(box.minY + k * (widthMm - lapMm)))
  const all = [0, 1].flatMap((odd) => {
    const courses = lowsMm.map((_, k) => k).filter((k) => k % 2 === odd)
    const strips = courses.map((k) => rectangle({ ...box, minY: lowsMm[k] as number, maxY: (lowsMm[k] as number) + widthMm }))
    return intersection([outline], strips).map((polygon) => runOf(polygon, courses, lowsMm))
  })
  const real = all.filter(({ polygon }) => polygonAreaMm2(polygon) > leastMm2)
  return { count, lowsMm, runs: [...needed(real, lowsMm, lapMm)].sort((a, b) => a.course - b.course || a.fromMm - b.fromMm || a.lowMm - b.lowMm) }
}

function runOf(polygon: Polygon, courses: readonly number[], lowsMm: readonly number[]): Run {
  const { minX, maxX, minY, maxY } = boxOfRegion([polygon])
  const middle = (minY + maxY) / 2
  let [low, high] = [0, courses.length - 1]
  while (low < high) {
    const half = Math.ceil((low + high) / 2)
    if ((lowsMm[courses[half] as number] as number) <= middle) low = half
    else high = half - 1
  }
  return { course: (courses[low] as number) + 1, polygon, fromMm: minX, toMm: maxX, lowMm: minY, highMm: maxY }
}

/** First what the course above takes whole, then what the course below does. */
function needed(runs: readonly Run[], lowsMm: readonly number[], lapMm: number): readonly Run[] {
  const kept = runs.filter(({ course, lowMm }) => lowMm < (lowsMm[course] ?? Number.POSITIVE_INFINITY) - slackMm)
  const byCourse = grouped(kept, ({ course }) => course)
  return kept.filter(({ course, polygon, highMm }) => {
    const top = (lowsMm[course - 1] as number) + lapMm
    if (highMm > top + slackMm) return true
    const inside = pointInside(polygon)
    return !(byCourse.get(course - 1) ?? []).some((below) => inPolygon(inside, below.polygon))
  })
}
