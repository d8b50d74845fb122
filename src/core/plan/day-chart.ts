import { type Activity, activities } from '../finding.js'
import { dayMarks, type Instant, localTime } from '../instant.js'
import { createMemo } from '../memo.js'
import { firstInstantAt } from '../schedule.js'
import type { SiteSettings } from '../site.js'
import type { Band } from './windows.js'

/** One value of a line; null where the line has a gap. */
export interface Point {
  readonly at: Instant
  readonly value: number | null
}

/** A value with one standard deviation in the same unit. */
export interface SpreadPoint extends Point {
  readonly spread: number
}

/** The rain of a span of time, most often an hour; null where the source says nothing. */
export interface RainBar {
  readonly from: Instant
  readonly to: Instant
  readonly mmPerHour: number | null
  readonly chancePct: number | null
}

/** What the lines and bars of a day are made of; each may be empty. */
export interface DaySeries {
  readonly airC: readonly Point[]
  readonly dewPointC: readonly Point[]
  /** Null where nothing is known of the surface. */
  readonly substrateC: readonly SpreadPoint[] | null
  readonly windKmh: readonly Point[]
  readonly gustKmh: readonly Point[]
  readonly rain: readonly RainBar[]
}

export interface Sun {
  readonly sunriseAt: Instant | null
  readonly sunsetAt: Instant | null
  /** Where it neither rises nor sets. */
  readonly always: 'up' | 'down' | null
}

export interface DayChartParts {
  readonly site: string
  readonly settings: Pick<SiteSettings, 'zone' | 'units' | 'lang' | 'invented'>
  /** Local date, YYYY-MM-DD. */
  readonly date: string
  readonly now: Instant | null
  readonly bands: Readonly<Record<Activity, readonly Band[]>>
  readonly series: DaySeries
  readonly sun: Sun
  /** The weather is the invented week. */
  readonly sample: boolean
}

export interface HourMark {
  readonly at: Instant
  /** Local hour 0 … 23. */
  readonly hour: number
}

/** What the picture of a local day shows, from midnight to midnight: 23 to 25 hours. */
export interface DayChart extends DaySeries, Sun {
  readonly site: string
  readonly invented: boolean
  readonly sample: boolean
  readonly date: string
  readonly zone: string
  readonly units: SiteSettings['units']
  readonly lang: SiteSettings['lang']
  readonly from: Instant
  readonly to: Instant
  /** Every full local hour after the first midnight and before the last. */
  readonly hours: readonly HourMark[]
  /** Null when it is not on this day. */
  readonly now: Instant | null
  /** In the order of the activities, cut to the day. */
  readonly rows: readonly { readonly activity: Activity; readonly bands: readonly Band[] }[]
}

const halfHourS = 1800
const mostHalfHours = 52

/** Cuts everything to one local day. Null for a date that the zone does not have. Pure. */
export function dayChart(parts: DayChartParts): DayChart | null {
  const { site, settings, date, now, bands, series, sun, sample } = parts
  const { zone, units, lang, invented } = settings
  const from = firstInstantAt(date, '00:00', zone)
  if (from === null) return null
  const to = dayMarks(date, zone).midnight
  const rows = activities.map((activity) => ({ activity, bands: cutBands(bands[activity], from, to) }))
  return {
    ...{ site, invented, sample, date, zone, units, lang, from, to, hours: marked(`${zone} ${from} ${to}`, () => hourMarks(from, to, zone)), rows },
    now: now !== null && now >= from && now < to ? now : null,
    airC: cutPoints(series.airC, from, to),
    dewPointC: cutPoints(series.dewPointC, from, to),
    substrateC: series.substrateC === null ? null : cutPoints(series.substrateC, from, to),
    windKmh: cutPoints(series.windKmh, from, to),
    gustKmh: cutPoints(series.gustKmh, from, to),
    rain: cutBands(series.rain, from, to),
    sunriseAt: sun.sunriseAt,
    sunsetAt: sun.sunsetAt,
    always: sun.always
  }
}

/** The last ones asked for: thousands of sites have the same day. */
const marked = createMemo<readonly HourMark[]>(50)

/** By the half hour, since some zones change their clocks by that much. */
function hourMarks(from: Instant, to: Instant, zone: string): readonly HourMark[] {
  const marks: HourMark[] = []
  for (let step = 1; step <= mostHalfHours; step += 1) {
    const at = from + step * halfHourS
    if (at >= to) break
    const [hour, minute] = localTime(at, zone).split(':').map(Number)
    if (hour !== undefined && minute === 0) marks.push({ at, hour })
  }
  return marks
}

function cutBands<B extends { readonly from: Instant; readonly to: Instant }>(bands: readonly B[], from: Instant, to: Instant): readonly B[] {
  return bands.map((band) => ({ ...band, from: Math.max(band.from, from), to: Math.min(band.to, to) })).filter((band) => band.to > band.from)
}

/** What is no number is a gap, never a value. */
function cutPoints<P extends Point>(points: readonly P[], from: Instant, to: Instant): readonly P[] {
  const inside = points.filter(({ at }) => at >= from && at <= to)
  return inside.map((point) => (point.value === null || Number.isFinite(point.value) ? point : { ...point, value: null }))
}

export interface Extremes {
  readonly min: { readonly at: Instant; readonly value: number }
  readonly max: { readonly at: Instant; readonly value: number }
}

/** The lowest and the highest value of a line, each where it is reached first; null for a line without values. */
export function extremesOf(points: readonly Point[]): Extremes | null {
  let min: Extremes['min'] | null = null
  let max: Extremes['max'] | null = null
  for (const { at, value } of points) {
    if (value === null) continue
    if (min === null || value < min.value) min = { at, value }
    if (max === null || value > max.value) max = { at, value }
  }
  return min === null || max === null ? null : { min, max }
}

/** The heaviest and the likeliest rain of the day; null where nothing is known of it. */
export function rainPeaks(rain: readonly RainBar[]): { readonly mmPerHour: Extremes['max'] | null; readonly chancePct: Extremes['max'] | null } {
  const peak = (key: 'mmPerHour' | 'chancePct') => extremesOf(rain.map((bar) => ({ at: bar.from, value: bar[key] })))?.max ?? null
  return { mmPerHour: peak('mmPerHour'), chancePct: peak('chancePct') }
}

/** True when there is neither a line nor a bar to draw. */
export function isEmpty(chart: DaySeries): boolean {
  const lines = [chart.airC, chart.dewPointC, chart.windKmh, chart.gustKmh]
  const dry = chart.rain.every(({ mmPerHour, chancePct }) => mmPerHour === null && chancePct === null)
  return dry && lines.every((line) => extremesOf(line) === null)
}
