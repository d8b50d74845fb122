import type { Text } from '../../../bot/text/text.js'
import { localTime } from '../../../core/instant.js'
import type { DayChart, HourMark } from '../../../core/plan/day-chart.js'
import { faint, ink, paper, straight, tag, widthOf, words } from '../svg.js'
import { plot, size, strips, type X } from './layout.js'

const labelEvery = 3

/** A thin line at every full local hour, a strong one at every third. */
export function hourGrid({ hours }: DayChart, x: X): string {
  const spans = [
    [strips.rows.top - 6, strips.rows.bottom],
    [strips.temperature.top, strips.rain.bottom]
  ] as const
  return hours
    .flatMap(({ at, hour }) => {
      const strong = hour % labelEvery === 0
      return spans.map(([top, bottom]) => straight(x(at), top, x(at), bottom, strong ? '#8a8a8a' : faint, strong ? 2.5 : 1.5))
    })
    .join('')
}

/** Hours of the clock under the rows and at the foot; those under the sign of now make room for it. */
export function hourAxes(chart: DayChart, x: X, text: Text): string {
  const now = nowBox(chart, x, text)
  const marks: readonly HourMark[] = [{ at: chart.from, hour: 0 }, ...chart.hours, { at: chart.to, hour: 24 }]
  const labelled = marks.filter(({ hour }) => hour % labelEvery === 0)
  const free = labelled.filter(({ at }) => now === null || x(at) + 24 < now.left || x(at) - 24 > now.right)
  const foot = strips.axis.top + 38
  const labels = (some: readonly HourMark[], y: number) =>
    some.map(({ at, hour }) => words(x(at), y, String(hour).padStart(2, '0'), { size: size.tick, anchor: 'middle' }))
  return [...labels(free, strips.middleAxis.top + 34), ...labels(labelled, foot)].join('')
}

/** Now: a line through everything, its time on a dark label between rows and lines. */
export function nowLine(chart: DayChart, x: X, text: Text): string {
  const box = nowBox(chart, x, text)
  if (box === null) return ''
  const { at, left, right, said } = box
  const { top, bottom } = strips.middleAxis
  return [
    straight(at, strips.sun.bottom, at, strips.rain.bottom, paper, 10),
    straight(at, strips.sun.bottom, at, strips.rain.bottom, ink, 5),
    tag('rect', { x: left, y: top + 4, width: right - left, height: bottom - top - 8, rx: 6, fill: ink, 'data-now': 'yes' }),
    words((left + right) / 2, top + 34, said, { size: size.tick, bold: true, fill: paper, anchor: 'middle' })
  ].join('')
}

function nowBox({ now, zone }: DayChart, x: X, text: Text) {
  if (now === null) return null
  const said = text.dayPicture.now(localTime(now, zone))
  const wide = widthOf(said, size.tick) + 24
  const at = x(now)
  const left = Math.min(Math.max(at - wide / 2, plot.left), plot.right - wide)
  return { at, left, right: left + wide, said }
}
