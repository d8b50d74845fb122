import { texts } from '../../bot/text/index.js'
import { dayAlt, inventedLabels, pictureDate } from '../../bot/views/day-alt.js'
import type { DayChart } from '../../core/plan/day-chart.js'
import { hourAxes, hourGrid, nowLine } from './day/axes.js'
import { bandHatches, bandRows } from './day/bands.js'
import { height, size, strips, width, xOf } from './day/layout.js'
import { linePanel, type Panel } from './day/lines.js'
import { rainHatches, rainPanel } from './day/rain.js'
import { sunStrip } from './day/sun.js'
import { escapeXml, fitted, ink, paper, tag, widthOf, words } from './svg.js'

/** The picture of a day: sun, what can be done when, temperatures, wind, rain, all over the same 24 hours. SVG, 1000 px wide. */
export function drawDay(chart: DayChart): string {
  const text = texts[chart.lang]
  const x = xOf(chart)
  const labels = inventedLabels(chart, text)
  const down = labels.length === 0 ? 0 : labelHigh
  const high = height + down
  const body = [
    sunStrip(chart, x),
    hourGrid(chart, x),
    bandRows(chart, x, text),
    linePanel(temperatures(chart), chart, x, text),
    linePanel(winds(chart), chart, x, text),
    rainPanel(chart, x, text),
    hourAxes(chart, x, text),
    nowLine(chart, x, text)
  ]
  const parts = [
    tag('title', {}, escapeXml(dayAlt(chart))),
    tag('defs', {}, [...bandHatches, ...rainHatches]),
    tag('rect', { width, height: high, fill: paper }),
    heading(chart, labels),
    tag('g', { transform: `translate(0 ${down})` }, body)
  ]
  return tag('svg', { xmlns: 'http://www.w3.org/2000/svg', width, height: high, viewBox: `0 0 ${width} ${high}`, lang: chart.lang }, parts)
}

const margin = 20
const labelHigh = 50

/** Place and date; below them, in a frame, what is invented. */
function heading(chart: DayChart, labels: readonly string[]): string {
  const date = pictureDate(chart)
  const room = width - 3 * margin - widthOf(date, size.title)
  const title = [
    words(margin, 46, fitted(chart.site, size.title, room), { size: size.title, bold: true }),
    words(width - margin, 46, date, { size: size.title, bold: true, anchor: 'end' })
  ].join('')
  if (labels.length === 0) return title
  const frame = { x: margin, y: 62, width: width - 2 * margin, height: labelHigh - 8, fill: paper, stroke: ink, 'stroke-width': 3 }
  return [title, tag('rect', frame), words(width / 2, 93, labels.join(' · '), { size: size.tick, anchor: 'middle', bold: true })].join('')
}

function temperatures({ airC, dewPointC, substrateC }: DayChart): Panel {
  return {
    ...{ strip: strips.temperature, unit: 'C', least: 10, fromZero: false, ticks: 4 },
    lines: [
      { name: 'dewPointC', points: dewPointC, stroke: '#0b4f9e', dash: '20 10', spread: [], told: [] },
      { name: 'substrateC', points: substrateC ?? [], stroke: '#9a3b00', dash: '4 9', spread: substrateC ?? [], told: [] },
      { name: 'airC', points: airC, stroke: ink, dash: 'none', spread: [], told: ['min', 'max'] }
    ]
  }
}

function winds({ windKmh, gustKmh }: DayChart): Panel {
  return {
    ...{ strip: strips.wind, unit: 'km/h', least: 20, fromZero: true, ticks: 3 },
    lines: [
      { name: 'gustKmh', points: gustKmh, stroke: '#5b1a78', dash: '20 10', spread: [], told: ['max'] },
      { name: 'windKmh', points: windKmh, stroke: ink, dash: 'none', spread: [], told: [] }
    ]
  }
}
