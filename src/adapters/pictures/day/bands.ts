import type { Text } from '../../../bot/text/text.js'
import { type Instant, localTime } from '../../../core/instant.js'
import type { Outcome } from '../../../core/outcome.js'
import type { DayChart } from '../../../core/plan/day-chart.js'
import type { Band } from '../../../core/plan/windows.js'
import { faint, ink, paper, straight, tag, words } from '../svg.js'
import { nothing } from './labels.js'
import { plot, size, strips, type X } from './layout.js'
import { sign } from './signs.js'

const rowHeight = 54
const rowGap = 6
const signRadius = 20
const leastSignRadius = 9
/** Both times and the sign between them. */
const timesFrom = 262

/** Each outcome has a height, a fill and a rim of its own: without any colour they still differ. */
const looks: Readonly<Record<Outcome, { readonly share: number; readonly fill: string; readonly dash: string }>> = {
  go: { share: 1, fill: '#0b5132', dash: 'none' },
  caution: { share: 0.84, fill: 'url(#caution)', dash: 'none' },
  unknown: { share: 0.84, fill: 'url(#unknown)', dash: '9 7' },
  'no-go': { share: 0.26, fill: '#8f1414', dash: 'none' }
}

export const bandHatches: readonly string[] = [
  tag('pattern', { id: 'caution', width: 18, height: 18, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' }, [
    tag('rect', { width: 18, height: 18, fill: '#ffd84a' }),
    tag('rect', { width: 5, height: 18, fill: ink })
  ]),
  tag('pattern', { id: 'unknown', width: 14, height: 14, patternUnits: 'userSpaceOnUse' }, [
    tag('rect', { width: 14, height: 14, fill: paper }),
    tag('circle', { cx: 7, cy: 7, r: 2.6, fill: ink })
  ])
]

/** A row for each activity: its name, and the outcome of each part of the day. What was not judged stays bare. */
export function bandRows(chart: DayChart, x: X, text: Text): string {
  const none = chart.rows.every(({ bands }) => bands.length === 0)
  const rows = chart.rows.map(({ activity, bands }, index) => {
    const middle = strips.rows.top + index * (rowHeight + rowGap) + rowHeight / 2
    const name = words(plot.left - 12, middle + 11, text.dayPicture.activities[activity], { size: size.label, anchor: 'end', bold: true })
    const bare = straight(plot.left, middle, plot.right, middle, faint, 3)
    return [bare, name, ...bands.map((band) => bandOf(band, middle, x, chart))].join('')
  })
  return [...rows, ...(none ? [nothing(strips.rows, text.dayPicture.notJudged)] : [])].join('')
}

function bandOf(band: Band, middle: number, x: X, chart: DayChart): string {
  const { share, fill, dash } = looks[band.outcome]
  const [left, right, high] = [x(band.from), x(band.to), rowHeight * share]
  const box = { x: left, y: middle - high / 2, width: right - left, height: high }
  const radius = Math.min(signRadius, (right - left) / 2 - 1)
  return [
    tag('rect', { ...box, fill, stroke: ink, 'stroke-width': 2, 'stroke-dasharray': dash, 'data-outcome': band.outcome }),
    ...(radius >= leastSignRadius ? [sign(band.outcome, (left + right) / 2, middle, radius)] : []),
    ...(right - left >= timesFrom && share > 0.5 ? bandTimes(band, left, right, middle, chart) : [])
  ].join('')
}

/** When it begins and ends, where there is room. */
function bandTimes({ from, to, outcome }: Band, left: number, right: number, middle: number, { zone, to: end }: DayChart): readonly string[] {
  const style = outcome === 'go' ? { fill: paper } : { rim: true }
  const time = (at: Instant) => (at === end ? '24:00' : localTime(at, zone))
  return [
    words(left + 14, middle + 10, time(from), { size: size.tick, bold: true, ...style }),
    words(right - 10, middle + 10, time(to), { size: size.tick, bold: true, anchor: 'end', ...style })
  ]
}
