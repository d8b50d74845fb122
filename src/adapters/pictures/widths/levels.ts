import type { Text } from '../../../bot/text/text.js'
import { amount } from '../../../bot/views/amount.js'
import type { WidthsChart } from '../../../core/welds/widths-chart.js'
import { spaced } from '../day/layout.js'
import { fitted, ink, straight, tag, words } from '../svg.js'
import { bottom, left, right, sizes, top, width, type XY } from './layout.js'

/** Dashes tell the lines apart without colour; the minimum is the strongest. */
const styles = {
  least: { dash: 'none', strong: 6 },
  mean: { dash: '26 8', strong: 3 },
  low: { dash: '4 8', strong: 3 },
  high: { dash: '4 8', strong: 3 }
} as const

const labelX = right + 34
const step = 36

/** Minimum, mean and control limits across the plot, each with its name and amount beside its end. */
export function levelLines(chart: WidthsChart, { y }: XY, { widths }: Text): string {
  const { minWidthMm, meanMm, lowMm, highMm } = chart
  const levels = (
    [
      ['high', highMm],
      ['mean', meanMm],
      ['low', lowMm],
      ['least', minWidthMm]
    ] as const
  ).flatMap(([name, mm]) => (mm === null ? [] : [{ name, mm, at: y(mm) }]))
  const places = spaced(
    levels.map(({ at }) => at),
    step,
    { top: top + 6, bottom: bottom - 4 }
  )
  return levels
    .map(({ name, mm, at }, index) => {
      const { dash, strong } = styles[name]
      const place = places[index] ?? at
      const said = fitted(`${widths[name]} ${amount(mm, 'mm', chart)}`, sizes.label, width - labelX - 6)
      return [
        tag('line', { x1: left, y1: at, x2: right, y2: at, stroke: ink, 'stroke-width': strong, 'stroke-dasharray': dash, 'data-line': name }),
        straight(right, at, labelX - 6, place, ink, 2),
        words(labelX, place + 10, said, { size: sizes.label, bold: name === 'least' })
      ].join('')
    })
    .join('')
}
