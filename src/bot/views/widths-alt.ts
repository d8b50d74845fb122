import { DateTime } from 'luxon'
import { localDate, localTime } from '../../core/instant.js'
import type { WidthsChart } from '../../core/welds/widths-chart.js'
import { texts } from '../text/index.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { driftWords } from './drift.js'
import { welderName } from './welder.js'

const mostTold = 12

/** "Mon 4 May", a day on the picture. */
export function pictureDay(at: number, { zone, lang }: Pick<WidthsChart, 'zone' | 'lang'>): string {
  return DateTime.fromSeconds(at, { zone }).setLocale(lang).toFormat('ccc d LLL')
}

/** Everything that the picture shows, in words: lines, coupons newest last, trend. Below 2,000 characters. */
export function widthsAlt(chart: WidthsChart): string {
  const text = texts[chart.lang]
  const { widths, coupon, frame } = text
  const title = `${widths.title(welderName(chart.welder, text))}, ${chart.site}`
  const shown = (value: number) => amount(value, 'mm', chart)
  const lines = [
    [widths.least, chart.minWidthMm] as const,
    [widths.mean, chart.meanMm] as const,
    [widths.low, chart.lowMm] as const,
    [widths.high, chart.highMm] as const
  ].flatMap(([name, value]) => (value === null ? [] : [`${name} ${shown(value)}`]))
  const parts = [
    chart.invented ? `${title} (${frame.invented})` : title,
    lines.join(', '),
    couponWords(chart, text),
    ...driftWords({ drift: chart.drift?.kind ?? null, shortIn: chart.drift?.shortIn ?? null }, text),
    ...(chart.chanceShort === null ? [] : [coupon.short(amount(chart.chanceShort * 100, '%', chart))])
  ]
  return `${parts.map((words) => words.charAt(0).toUpperCase() + words.slice(1)).join('. ')}.`
}

function couponWords(chart: WidthsChart, { widths, frame }: Text): string {
  const { coupons, zone } = chart
  if (coupons.length === 0) return widths.none
  const last = coupons.slice(-mostTold)
  const told = last.map(({ at, widthMm, passed }, index) => {
    const newDay = index === 0 || localDate(at, zone) !== localDate(last[index - 1]?.at ?? at, zone)
    const time = newDay ? `${pictureDay(at, chart)} ${localTime(at, zone)}` : localTime(at, zone)
    return widths.one(time, amount(widthMm, 'mm', chart), passed ? widths.passed : widths.failed)
  })
  const more = coupons.length > last.length ? [frame.more(coupons.length - last.length)] : []
  return `${widths.coupons(coupons.length)}${frame.colon}${[...told, ...more].join(', ')}`
}
