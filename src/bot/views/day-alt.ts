import { type Instant, localTime } from '../../core/instant.js'
import { type DayChart, extremesOf, isEmpty, type Point, rainPeaks } from '../../core/plan/day-chart.js'
import type { Band } from '../../core/plan/windows.js'
import { convert } from '../../core/units.js'
import type { DayPictureWords, LineName } from '../text/day-picture-words.js'
import { texts } from '../text/index.js'
import type { Text } from '../text/text.js'
import { dateIn } from './clock.js'
import type { How } from './how.js'
import { numeral } from './number.js'

const mostBands = 8
const lineNames = ['airC', 'dewPointC', 'substrateC', 'windKmh', 'gustKmh'] as const

/** Units on the picture: whole degrees and speeds, rain to a tenth of a millimetre or a hundredth of an inch an hour. */
const shown = {
  metric: { C: ['C', '°C', 0], 'km/h': ['km/h', 'km/h', 0], mm: ['mm', 'mm/h', 1] },
  us: { C: ['F', '°F', 0], 'km/h': ['mph', 'mph', 0], mm: ['in', 'in/h', 2] }
} as const

export type PictureUnit = 'C' | 'km/h' | 'mm'

/** A value in the unit that the picture has it in, not rounded. */
export function inPictureUnit(value: number, unit: PictureUnit, { units }: Pick<How, 'units'>): number {
  return convert(value, unit, shown[units][unit][0]) ?? value
}

export function pictureSymbol(unit: PictureUnit, { units }: Pick<How, 'units'>): string {
  return shown[units][unit][1]
}

/** An amount as picture and alt text have it; °C, km/h, or mm in an hour. */
export function pictureAmount(value: number, unit: PictureUnit, how: Pick<How, 'lang' | 'units'>): string {
  const [, symbol, decimals] = shown[how.units][unit]
  const least = 10 ** -decimals
  const inUnit = inPictureUnit(value, unit, how)
  // Drizzle is never told as nothing.
  const trace = unit === 'mm' && inUnit > 0 && inUnit < least / 2
  return `${trace ? '< ' : ''}${numeral(trace ? least : inUnit, decimals, how)}\u00a0${symbol}`
}

/** Weekday and date in the language of the picture. */
export function pictureDate({ date, lang }: Pick<DayChart, 'date' | 'lang'>): string {
  return dateIn(date, 'ccc d LLL yyyy', lang) ?? date
}

/** What is invented on the picture: the site, the week, both, or nothing. */
export function inventedLabels({ invented, sample }: DayChart, text: Text): readonly string[] {
  return [...(invented ? [text.frame.invented] : []), ...(sample ? [text.dayPicture.inventedWeek] : [])]
}

/** Everything that the picture shows, in words: bands, lines with their extremes, rain, sun. Below 2,000 characters. */
export function dayAlt(chart: DayChart): string {
  const text = texts[chart.lang]
  const labels = inventedLabels(chart, text)
  const title = text.dayPicture.title(chart.site, pictureDate(chart))
  const weather = isEmpty(chart) ? [text.posts.noForecast] : [...lineNames.map((name) => lineWords(chart, name, text)), rainWords(chart, text)]
  const parts = [
    labels.length === 0 ? title : `${title} (${labels.join(', ')})`,
    ...chart.rows.map(({ activity, bands }) => `${text.activities[activity]}${text.frame.colon}${bandWords(bands, chart, text)}`),
    ...weather,
    ...sunWords(chart, text.dayPicture),
    ...(chart.now === null ? [] : [text.dayPicture.now(localTime(chart.now, chart.zone))])
  ]
  return `${parts.map(capital).join('. ')}.`
}

function bandWords(bands: readonly Band[], { zone, to: end }: DayChart, text: Text): string {
  if (bands.length === 0) return text.dayPicture.notJudged
  const words = bands.slice(0, mostBands).map(({ from, to, outcome }) => {
    const until = to === end ? '24:00' : localTime(to, zone)
    return text.posts.window(`${localTime(from, zone)}–${until}`, text.outcomesWithin[outcome])
  })
  return [...words, ...(bands.length > mostBands ? [text.frame.more(bands.length - mostBands)] : [])].join(', ')
}

function lineWords(chart: DayChart, name: LineName, text: Text): string {
  const points: readonly Point[] = chart[name] ?? []
  const called = text.decision.numbers[name]
  const extremes = extremesOf(points)
  if (extremes === null) return `${called}${text.frame.colon}${text.dayPicture.notKnown}`
  const unit = name.endsWith('C') ? 'C' : 'km/h'
  const said = ({ at, value }: { at: Instant; value: number }) => text.dayPicture.at(pictureAmount(value, unit, chart), timeOf(at, chart))
  return unit === 'C' ? text.posts.range(called, said(extremes.min), said(extremes.max)) : text.posts.upTo(called, said(extremes.max))
}

function rainWords(chart: DayChart, text: Text): string {
  const { mmPerHour, chancePct } = rainPeaks(chart.rain)
  const words = text.dayPicture
  if (mmPerHour === null && chancePct === null) return `${words.rain}${text.frame.colon}${words.notKnown}`
  const none = mmPerHour?.value === 0 ? [words.noRain] : []
  const upTo = (name: string, amount: string, at: Instant) => text.posts.upTo(name, words.at(amount, timeOf(at, chart)))
  const most = mmPerHour !== null && mmPerHour.value > 0 ? [upTo(words.rain, pictureAmount(mmPerHour.value, 'mm', chart), mmPerHour.at)] : []
  const chance = chancePct === null ? [] : [upTo(text.decision.numbers.rainChancePct, `${numeral(chancePct.value, 0, chart)}\u00a0%`, chancePct.at)]
  return [...none, ...most, ...chance].join(', ')
}

function sunWords({ sunriseAt, sunsetAt, always, zone }: DayChart, words: DayPictureWords): readonly string[] {
  if (always !== null) return [always === 'up' ? words.sunUp : words.sunDown]
  const rise = sunriseAt === null ? [] : [words.sunrise(localTime(sunriseAt, zone))]
  return [...rise, ...(sunsetAt === null ? [] : [words.sunset(localTime(sunsetAt, zone))])]
}

function timeOf(at: Instant, { zone, to }: DayChart): string {
  return at === to ? '24:00' : localTime(at, zone)
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1)
}
