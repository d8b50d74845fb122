import { scaleLinear } from 'd3-scale'
import { area, line } from 'd3-shape'
import type { LineName } from '../../../bot/text/day-picture-words.js'
import type { Text } from '../../../bot/text/text.js'
import { inPictureUnit, pictureAmount, pictureSymbol } from '../../../bot/views/day-alt.js'
import { numeral } from '../../../bot/views/number.js'
import { type DayChart, extremesOf, type Point, type SpreadPoint } from '../../../core/plan/day-chart.js'
import { faint, ink, paper, straight, tag, widthOf, words } from '../svg.js'
import { endLabels, nothing } from './labels.js'
import { kept, plot, type Strip, size, type X, yOf } from './layout.js'

type Y = (value: number) => number
type Unit = 'C' | 'km/h'

export interface Line {
  readonly name: LineName
  readonly points: readonly Point[]
  readonly stroke: string
  /** Dashes tell the lines apart without colour. */
  readonly dash: string
  readonly spread: readonly SpreadPoint[]
  /** Which ends of its range are written beside it. */
  readonly told: readonly ('min' | 'max')[]
}

export interface Panel {
  readonly strip: Strip
  readonly unit: Unit
  /** In the JSON unit: at least this span is shown. */
  readonly least: number
  /** True where the scale begins at zero. */
  readonly fromZero: boolean
  readonly ticks: number
  readonly lines: readonly Line[]
}

/** Room for figures beyond the highest and the lowest value. */
const roomShare = 0.16

/** Lines of one unit over one scale, each with its name at its end. Says so when there is none. */
export function linePanel({ strip, unit, least, fromZero, ticks, lines }: Panel, chart: DayChart, x: X, text: Text): string {
  const known = lines.filter(({ points }) => extremesOf(points) !== null)
  if (known.length === 0) return nothing(strip, text.posts.noForecast)
  const shown = (value: number) => inPictureUnit(value, unit, chart)
  const values = known.flatMap(({ points, spread }) => [...points, ...edges(spread)].flatMap(({ value }) => (value === null ? [] : [shown(value)])))
  const span = shown(least) - shown(0)
  const domain = domainOf(values, span, fromZero)
  const inUnit = yOf(domain, strip)
  const y: Y = (value) => inUnit(shown(value))
  return [
    ...scaleLinear()
      .domain(domain)
      .ticks(ticks)
      .map((tick, index, all) => tickLine(tick, inUnit(tick), index === all.length - 1, unit, chart)),
    ...known.map((each) => band(each, x, y)),
    ...known.map((each) => stroke(each, x, y)),
    ...known.flatMap((each) => toldOf(each, unit, strip, chart, x, y)),
    endLabels(
      known.map(({ name, points }) => ({ name: text.dayPicture.lines[name], ...lastOf(points, x, y) })),
      strip
    )
  ].join('')
}

function edges(spread: readonly SpreadPoint[]): readonly Point[] {
  return spread.flatMap(({ at, value, spread: sigma }) => (value === null ? [] : [-sigma, sigma].map((by) => ({ at, value: value + by }))))
}

function domainOf(values: readonly number[], span: number, fromZero: boolean): readonly [number, number] {
  const [low, high] = [fromZero ? 0 : Math.min(...values), Math.max(...values)]
  const wide = Math.max(span, high - low)
  const short = wide - (high - low)
  const room = wide * roomShare
  return fromZero ? [0, high + short + 2 * room] : [low - short / 2 - room, high + short / 2 + room]
}

/** Freezing is drawn strong: the dew point turns into the frost point there. */
function tickLine(tick: number, at: number, last: boolean, unit: Unit, chart: DayChart): string {
  const freezing = unit === 'C' && tick === inPictureUnit(0, 'C', chart)
  const label = last ? `${numeral(tick, 0, chart)}\u00a0${pictureSymbol(unit, chart)}` : numeral(tick, 0, chart)
  return [
    straight(plot.left, at, plot.right, at, freezing ? ink : faint, freezing ? 4 : 2),
    words(plot.left - 12, at + 10, label, { size: size.tick, anchor: 'end' })
  ].join('')
}

function stroke({ name, points, stroke: colour, dash, spread }: Line, x: X, y: Y): string {
  const path = line<Point>()
    .defined(({ value }) => value !== null)
    .x(({ at }) => x(at))
    .y(({ value }) => y(value ?? 0))
    .digits(1)(points)
  // A round end lets a value that stands alone be seen; between dashes it would fill the gaps.
  const drawn = { d: path ?? '', fill: 'none', 'stroke-linejoin': 'round', 'stroke-linecap': dash === 'none' ? 'round' : 'butt' }
  return [
    ...(spread.length === 0 ? [tag('path', { ...drawn, stroke: paper, 'stroke-width': 12 })] : []),
    tag('path', { ...drawn, stroke: colour, 'stroke-width': 7, 'stroke-dasharray': dash, 'data-line': name })
  ].join('')
}

/** One standard deviation to each side. */
function band({ spread, stroke: colour }: Line, x: X, y: Y): string {
  if (spread.length === 0) return ''
  const path = area<SpreadPoint>()
    .defined(({ value }) => value !== null)
    .x(({ at }) => x(at))
    .y0(({ value, spread: sigma }) => y((value ?? 0) - sigma))
    .y1(({ value, spread: sigma }) => y((value ?? 0) + sigma))
    .digits(1)(spread)
  return tag('path', { d: path ?? '', fill: colour, 'fill-opacity': 0.22, 'data-spread': 'yes' })
}

function toldOf({ points, told }: Line, unit: Unit, strip: Strip, chart: DayChart, x: X, y: Y): readonly string[] {
  const extremes = extremesOf(points)
  if (extremes === null) return []
  return told.map((end) => {
    const { at, value } = extremes[end]
    const [cx, cy] = [x(at), y(value)]
    const above = end === 'max' ? cy - 16 > strip.top + 14 : cy + 40 > strip.bottom
    const said = pictureAmount(value, unit, chart)
    const tx = kept(cx, widthOf(said, size.tick), chart, x)
    return [
      tag('circle', { cx, cy, r: 9, fill: paper, stroke: ink, 'stroke-width': 5 }),
      words(tx, above ? cy - 16 : cy + 42, said, { size: size.tick, anchor: 'middle', bold: true, rim: true })
    ].join('')
  })
}

function lastOf(points: readonly Point[], x: X, y: Y): { readonly x: number; readonly y: number } {
  const last = points.findLast(({ value }) => value !== null)
  return { x: x(last?.at ?? 0), y: y(last?.value ?? 0) }
}
