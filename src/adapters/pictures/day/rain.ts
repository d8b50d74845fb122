import type { Text } from '../../../bot/text/text.js'
import { pictureAmount } from '../../../bot/views/day-alt.js'
import { numeral } from '../../../bot/views/number.js'
import type { Instant } from '../../../core/instant.js'
import { type DayChart, type RainBar, rainPeaks } from '../../../core/plan/day-chart.js'
import { faint, ink, paper, straight, tag, widthOf, words } from '../svg.js'
import { endLabels, nothing } from './labels.js'
import { kept, plot, size, strips, type X, yOf } from './layout.js'

/** Above the bars is room for what the highest of them stand for. */
const bars = { top: strips.rain.top + 40, bottom: strips.rain.bottom }
const leastTopMm = 2
const chanceY = yOf([0, 100], bars)

export const rainHatches: readonly string[] = [
  tag('pattern', { id: 'chance', width: 10, height: 10, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' }, [
    tag('rect', { width: 10, height: 10, fill: paper }),
    tag('rect', { width: 3, height: 10, fill: '#4d6f9c' })
  ])
]

/** Rain from below: hatched for the chance, 0 … 100 %, solid for the amount on a scale of its own; the peaks in figures. */
export function rainPanel(chart: DayChart, x: X, text: Text): string {
  const { mmPerHour, chancePct } = rainPeaks(chart.rain)
  if (mmPerHour === null && chancePct === null) return nothing(strips.rain, text.posts.noForecast)
  const amountY = yOf([0, Math.max(leastTopMm, mmPerHour?.value ?? 0)], bars)
  return [
    ...[0, 100].map((pct) => tick(pct, chart)),
    ...chart.rain.map(({ from, to, chancePct: pct }) => (pct === null ? '' : bar(x(from), x(to), chanceY(pct), 'url(#chance)', 'chance'))),
    ...chart.rain.map(({ from, to, mmPerHour: mm }) =>
      mm === null || mm === 0 ? '' : bar(x(from) + inset, x(to) - inset, amountY(mm), '#0b2f66', 'rain')
    ),
    straight(plot.left, bars.bottom, plot.right, bars.bottom, ink, 4),
    peaks(chart, x),
    endLabels(ends(chart, amountY, x, text), { top: bars.top, bottom: bars.bottom })
  ].join('')
}

const inset = 7

function tick(pct: number, chart: DayChart): string {
  const at = chanceY(pct)
  const label = words(plot.left - 12, at + 8, `${numeral(pct, 0, chart)}\u00a0%`, { size: size.tick, anchor: 'end' })
  return `${straight(plot.left, at, plot.right, at, faint, 2)}${label}`
}

function bar(left: number, right: number, top: number, fill: string, what: string): string {
  if (right <= left) return ''
  return tag('rect', { x: left, y: top, width: right - left, height: bars.bottom - top, fill, stroke: ink, 'stroke-width': 2, 'data-bar': what })
}

/** Chance and amount at their highest; as one where they would stand on each other. */
function peaks(chart: DayChart, x: X): string {
  const { mmPerHour, chancePct } = rainPeaks(chart.rain)
  const said = [
    ...(chancePct === null ? [] : [{ at: chancePct.at, words: `${numeral(chancePct.value, 0, chart)}\u00a0%` }]),
    ...(mmPerHour === null || mmPerHour.value === 0 ? [] : [{ at: mmPerHour.at, words: pictureAmount(mmPerHour.value, 'mm', chart) }])
  ].map((each) => ({ ...each, ...placed(x(middleOf(each.at, chart.rain)), each.words, chart, x) }))
  const [first, second] = said
  if (first === undefined) return ''
  const apart = second === undefined || Math.abs(first.middle - second.middle) > (first.wide + second.wide) / 2
  const shown = apart ? said : [{ ...first, ...placed(first.middle, `${first.words} · ${second.words}`, chart, x) }]
  return shown
    .map(({ middle, words: each }) => words(middle, bars.top - 10, each, { size: size.tick, anchor: 'middle', bold: true, rim: true }))
    .join('')
}

function placed(middle: number, said: string, chart: DayChart, x: X): { readonly words: string; readonly middle: number; readonly wide: number } {
  const wide = widthOf(said, size.tick)
  return { words: said, wide, middle: kept(middle, wide, chart, x) }
}

function middleOf(at: Instant, rain: readonly RainBar[]): Instant {
  const found = rain.find(({ from }) => from === at)
  return found === undefined ? at : (found.from + found.to) / 2
}

function ends({ rain }: DayChart, amountY: (mm: number) => number, x: X, text: Text) {
  const { mmPerHour, chancePct } = rainPeaks(rain)
  const chance = rain.findLast((bar) => bar.chancePct !== null)
  const amount = rain.findLast((bar) => bar.mmPerHour !== null)
  const { rain: name, chance: chanceName } = text.dayPicture
  return [
    ...(chance === undefined || chancePct === null ? [] : [{ name: chanceName, x: x(chance.to), y: chanceY(chance.chancePct ?? 0) }]),
    ...(amount === undefined || mmPerHour === null
      ? []
      : [{ name: mmPerHour.value === 0 ? `${name} 0` : name, x: x(amount.to), y: amountY(amount.mmPerHour ?? 0) }])
  ]
}
