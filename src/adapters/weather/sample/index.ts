import { DateTime } from 'luxon'
import type { Instant } from '../../../core/instant.js'
import { relativeHumidityPct } from '../../../core/physics/air.js'
import { type Forecast, makeForecast } from '../../../core/weather/forecast.js'
import { emptyHour, type Hour } from '../../../core/weather/hour.js'
import { type Quarters, type SampleDay, week } from './week.js'

// The shipped week is INVENTED and every forecast made of it says so (`source: 'sample'`, `sample: true`).

const hourS = 3600
const backHours = 36
const aheadHours = 60
const coldestHour = 5
const warmestHour = 15

/** The last one made: it depends on the hour and the zone alone. */
let last: { readonly issuedAt: Instant; readonly zone: string; readonly forecast: Forecast } | null = null

/**
 * The invented week as a forecast: the same week repeated from Monday to Sunday in the local time of an IANA zone, from
 * 36 h before `now` to 60 h after it, issued at the full hour. It has no sunshine of its own: that follows from the true
 * height of the sun and the cloud, so that the week fits every season's daylight.
 */
export function sampleForecast(now: Instant, zone: string): Forecast {
  const issuedAt = Math.floor(now / hourS) * hourS
  if (last !== null && last.issuedAt === issuedAt && last.zone === zone) return last.forecast
  const hours: Hour[] = []
  for (let hour = -backHours; hour <= aheadHours; hour += 1) hours.push(hourAt(issuedAt + hour * hourS, zone))
  const forecast = makeForecast({ source: 'sample', issuedAt, sample: true, hours })
  last = { issuedAt, zone, forecast }
  return forecast
}

function hourAt(at: Instant, zone: string): Hour {
  const local = DateTime.fromSeconds(at, { zone })
  const clock = local.hour + local.minute / 60
  const airC = airAt(local.weekday, clock)
  const dewPointC = Math.min(
    quarterly(local.weekday, clock, (day) => day.dewPointC),
    airC - 0.2
  )
  const windKmh = quarterly(local.weekday, clock, (day) => day.windKmh)
  return {
    ...emptyHour(at),
    airC,
    dewPointC,
    rhPct: relativeHumidityPct(airC, dewPointC),
    windKmh,
    cloudPct: quarterly(local.weekday, clock, (day) => day.cloudPct),
    gustKmh: windKmh * dayOf(local.weekday).gustFactor,
    ...rainBefore(DateTime.fromSeconds(at - hourS, { zone }))
  }
}

/** Rain of the hour that begins at a local time. */
function rainBefore(begin: DateTime): Pick<Hour, 'rainMm' | 'rainChancePct' | 'thunder'> {
  const day = dayOf(begin.weekday)
  const spell = day.spells.find(({ from, to }) => begin.hour >= from && begin.hour < to)
  return { rainMm: spell?.mmPerHour ?? 0, rainChancePct: spell?.chancePct ?? day.chancePct, thunder: spell?.thunder ?? false }
}

/** Half a cosine from each coldest to the next warmest hour and down again, across midnight. */
function airAt(weekday: number, clock: number): number {
  const day = dayOf(weekday)
  if (clock < coldestHour) return cosine(dayOf(weekday - 1).maxC, day.minC, (clock + 24 - warmestHour) / nightHours)
  if (clock < warmestHour) return cosine(day.minC, day.maxC, (clock - coldestHour) / (warmestHour - coldestHour))
  return cosine(day.maxC, dayOf(weekday + 1).minC, (clock - warmestHour) / nightHours)
}

const nightHours = 24 - warmestHour + coldestHour

function cosine(from: number, to: number, share: number): number {
  return from + ((to - from) * (1 - Math.cos(Math.PI * share))) / 2
}

function quarterly(weekday: number, clock: number, curve: (day: SampleDay) => Quarters): number {
  const today = curve(dayOf(weekday))
  const quarter = Math.floor(clock / 6)
  const from = today[quarter] ?? 0
  const to = today[quarter + 1] ?? curve(dayOf(weekday + 1))[0]
  return from + ((to - from) * (clock - quarter * 6)) / 6
}

/** ISO weekday 1 … 7, and 0 or 8 for the neighbours. */
function dayOf(weekday: number): SampleDay {
  const day = week[(weekday + 6) % 7]
  if (day === undefined) throw new RangeError(`not a weekday: ${weekday}`)
  return day
}
