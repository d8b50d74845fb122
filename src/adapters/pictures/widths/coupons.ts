import { pictureDay } from '../../../bot/views/widths-alt.js'
import { localDate, localTime } from '../../../core/instant.js'
import type { WidthsChart } from '../../../core/welds/widths-chart.js'
import { faint, ink, paper, straight, tag, widthOf, words } from '../svg.js'
import { bottom, right, sizes, top, type XY } from './layout.js'

const radius = 11

/** A line through the coupons; a full disc for one that passed, a cross in a ring for one that failed. */
export function couponMarks({ coupons }: WidthsChart, { x, y }: XY): string {
  const places = coupons.map(({ widthMm, passed }, index) => ({ x: x(index), y: y(widthMm), passed }))
  const path = places.map((place) => `${place.x.toFixed(1)},${place.y.toFixed(1)}`).join(' ')
  const line = places.length < 2 ? '' : tag('polyline', { points: path, fill: 'none', stroke: ink, 'stroke-width': 4 })
  return [line, ...places.map(mark)].join('')
}

function mark({ x, y, passed }: { readonly x: number; readonly y: number; readonly passed: boolean }): string {
  if (passed) return tag('circle', { cx: x, cy: y, r: radius, fill: ink, stroke: paper, 'stroke-width': 3, 'data-coupon': 'passed' })
  const arm = radius * 0.7
  return [
    tag('circle', { cx: x, cy: y, r: radius + 5, fill: paper, stroke: ink, 'stroke-width': 4, 'data-coupon': 'failed' }),
    straight(x - arm, y - arm, x + arm, y + arm, ink, 5),
    straight(x - arm, y + arm, x + arm, y - arm, ink, 5)
  ].join('')
}

/** Days along the foot, with a thin line where a new one begins; the times of first and last where all are of one day. */
export function dayMarksOf(chart: WidthsChart, { x }: XY): string {
  const { coupons, zone } = chart
  const begins = coupons.flatMap(({ at }, index) => {
    const before = coupons[index - 1]
    return before !== undefined && localDate(before.at, zone) === localDate(at, zone) ? [] : [{ index, said: pictureDay(at, chart) }]
  })
  let free = 0
  const days = begins.map(({ index, said }) => {
    const between = index === 0 ? x(0) : (x(index - 1) + x(index)) / 2
    const line = index === 0 ? '' : straight(between, top, between, bottom, faint, 3)
    const from = index === 0 ? x(0) - radius : between + 4
    const wide = widthOf(said, sizes.tick)
    if (from < free || from + wide > right + 120) return line
    free = from + wide + 16
    return `${line}${words(from, bottom + 40, said, { size: sizes.tick })}`
  })
  return [...days, ...timesOf(chart, x, begins.length === 1)].join('')
}

function timesOf({ coupons, zone }: WidthsChart, x: XY['x'], oneDay: boolean): readonly string[] {
  const [first, last] = [coupons[0], coupons.at(-1)]
  if (!oneDay || first === undefined || last === undefined) return []
  const time = (at: number, place: number, anchor: 'start' | 'end') => words(place, bottom + 74, localTime(at, zone), { size: sizes.tick, anchor })
  const begin = time(first.at, x(0) - radius, 'start')
  return coupons.length === 1 ? [begin] : [begin, time(last.at, x(coupons.length - 1) + radius, 'end')]
}
