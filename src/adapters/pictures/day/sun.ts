import { localTime } from '../../../core/instant.js'
import type { DayChart } from '../../../core/plan/day-chart.js'
import { ink, paper, straight, tag, words } from '../svg.js'
import { plot, size, strips, type X } from './layout.js'

const night = '#333333'
/** Room for both times inside the light part. */
const bothInside = 250
const { top, bottom } = strips.sun
const middle = (top + bottom) / 2

/** Light while the sun is up, with the times of rise and set; dark before and after. Nothing where nothing is known. */
export function sunStrip(chart: DayChart, x: X): string {
  const { sunriseAt, sunsetAt, always } = chart
  if (always === null && sunriseAt === null && sunsetAt === null) return ''
  const within = (value: number) => Math.min(Math.max(value, plot.left), plot.right)
  const left = always === 'down' ? plot.right : sunriseAt === null ? plot.left : within(x(sunriseAt))
  const right = always === 'down' ? plot.right : sunsetAt === null ? plot.right : within(x(sunsetAt))
  const high = { y: top, height: bottom - top, stroke: ink, 'stroke-width': 3 }
  return [
    sunSign(plot.left - 40, middle),
    tag('rect', { x: plot.left, width: plot.right - plot.left, ...high, fill: night }),
    ...(right > left ? [tag('rect', { x: left, width: right - left, ...high, fill: paper, 'data-sun': 'up' })] : []),
    ...(sunriseAt === null ? [] : [timeBeside(sunriseAt, left, 'rise', right - left >= bothInside, chart)]),
    ...(sunsetAt === null ? [] : [timeBeside(sunsetAt, right, 'set', right - left >= bothInside, chart)])
  ].join('')
}

/** An arrow up or down and the time, inside the light where there is room, else in the dark beside it. */
function timeBeside(at: number, edge: number, what: 'rise' | 'set', inside: boolean, { zone }: DayChart): string {
  const toRight = (what === 'rise') === inside
  const fill = inside ? ink : paper
  const way = toRight ? 1 : -1
  const [arrow, time] = [edge + way * 20, edge + way * 38]
  const up = what === 'rise' ? -1 : 1
  return [
    tag('path', { d: `M${arrow.toFixed(1)} ${middle + up * 11}l11 ${-up * 20}h-22z`, fill }),
    words(time, middle + 11, localTime(at, zone), { size: size.tick, bold: true, fill, anchor: toRight ? 'start' : 'end' })
  ].join('')
}

function sunSign(x: number, y: number): string {
  const rays = Array.from({ length: 8 }, (_, index) => {
    const [cos, sin] = [Math.cos((index * Math.PI) / 4), Math.sin((index * Math.PI) / 4)]
    return straight(x + 13 * cos, y + 13 * sin, x + 20 * cos, y + 20 * sin, ink, 4)
  })
  return [tag('circle', { cx: x, cy: y, r: 8, fill: ink }), ...rays].join('')
}
