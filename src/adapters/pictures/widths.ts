import { scaleLinear } from 'd3-scale'
import { texts } from '../../bot/text/index.js'
import { amount } from '../../bot/views/amount.js'
import { welderName } from '../../bot/views/welder.js'
import { widthsAlt } from '../../bot/views/widths-alt.js'
import type { WidthsChart } from '../../core/welds/widths-chart.js'
import { escapeXml, fitted, ink, paper, plate, tag, widthOf, words } from './svg.js'
import { couponMarks, dayMarksOf } from './widths/coupons.js'
import { bottom, height, left, right, sizes, top, width, type XY } from './widths/layout.js'
import { levelLines } from './widths/levels.js'

/** The picture of a welder's coupons: each width in its order over minimum, mean and control limits. SVG, 1000 px wide. */
export function drawWidths(chart: WidthsChart): string {
  const text = texts[chart.lang]
  const xy = scales(chart)
  const none = chart.coupons.length === 0 ? [plate((left + right) / 2, (top + bottom) / 2, text.widths.none, sizes.label)] : []
  const parts = [
    tag('title', {}, escapeXml(widthsAlt(chart))),
    tag('rect', { width, height, fill: paper }),
    heading(chart),
    tag('rect', { x: left, y: top, width: right - left, height: bottom - top, fill: 'none', stroke: ink, 'stroke-width': 2 }),
    levelLines(chart, xy, text),
    dayMarksOf(chart, xy),
    couponMarks(chart, xy),
    ...none
  ]
  return tag('svg', { xmlns: 'http://www.w3.org/2000/svg', width, height, viewBox: `0 0 ${width} ${height}`, lang: chart.lang }, parts)
}

/** Whose widths, and where; what is invented says so. */
function heading(chart: WidthsChart): string {
  const { welder, site, invented, lang, coupons } = chart
  const text = texts[lang]
  const last = coupons.at(-1)
  const newest = last === undefined ? '' : text.widths.newest(amount(last.widthMm, 'mm', chart))
  const room = width - 60 - widthOf(newest, sizes.title)
  const title = words(20, 46, fitted(text.widths.title(welderName(welder, text)), sizes.title, room), { size: sizes.title, bold: true })
  const where = invented ? `${site} · ${text.frame.invented}` : site
  return [
    title,
    words(width - 20, 46, newest, { size: sizes.title, bold: true, anchor: 'end' }),
    words(20, 86, fitted(where, sizes.tick, width - 40), { size: sizes.tick, bold: invented })
  ].join('')
}

/** Places for a coupon by its order and for a width; every line and every coupon is on the picture, with some room around. */
function scales({ coupons, minWidthMm, meanMm, lowMm, highMm }: WidthsChart): XY {
  const values = [...coupons.map(({ widthMm }) => widthMm), minWidthMm, meanMm, lowMm, highMm].filter((value) => value !== null)
  const [least, most] = [Math.min(...values), Math.max(...values)]
  const room = Math.max(1, (most - least) * 0.12)
  const x = scaleLinear()
    .domain([0, Math.max(1, coupons.length - 1)])
    .range([left + 40, right - 40])
  const y = scaleLinear()
    .domain([least - room, most + room])
    .range([bottom, top])
  return { x: (index) => (coupons.length === 1 ? (left + right) / 2 : x(index)), y: (mm) => y(mm) }
}
