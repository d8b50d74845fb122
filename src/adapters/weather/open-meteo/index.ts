import type { Instant } from '../../../core/instant.js'
import { makeForecast } from '../../../core/weather/forecast.js'
import { type Answer, type Asking, askOnce, fourDecimals, readHours, reasonIn, retryAt, under } from '../http.js'
import type { Fetched } from '../live-source.js'
import { SourceDown } from '../source-down.js'
import { openMeteoAnswer } from './schema.js'

export const openMeteoUrl = 'https://api.open-meteo.com/v1'
/** Those who pay ask elsewhere. Source: from memory. */
export const openMeteoPaidUrl = 'https://customer-api.open-meteo.com/v1'
const publisher = 'Open-Meteo'

/** Its answers say nothing of how long they hold; its models run hourly at best. Source: common practice, no source. */
const holdsS = 3600

/** What is read of its answers. */
const hourly = [
  'temperature_2m',
  'relative_humidity_2m',
  'dew_point_2m',
  'wind_speed_10m',
  'wind_gusts_10m',
  'cloud_cover',
  'precipitation',
  'precipitation_probability',
  'shortwave_radiation',
  'weather_code',
  'surface_pressure'
] as const

export interface OpenMeteoRequest extends Asking {
  readonly baseUrl: string
  /** Null: the free service, for non-commercial use. */
  readonly key: string | null
  readonly lat: number
  readonly lon: number
}

/**
 * Asks Open-Meteo for a place: two days back, for the surfaces, and four ahead, in UTC. Its answers do not say when they were
 * issued, so that is the time of the fetch. Throws SourceDown for whatever is not a forecast; the key stands in no message.
 */
export async function fetchOpenMeteo(request: OpenMeteoRequest): Promise<Fetched> {
  const { now } = request
  const answer = await askOnce({ publisher, url: urlOf(request), accept: 'application/json', lastModified: null }, request)
  if (answer.status !== 200) throw down(answer, request)
  const { hours } = readHours(publisher, openMeteoAnswer, answer.body, now)
  const forecast = makeForecast({ source: 'open-meteo', issuedAt: now, sample: false, hours })
  return { kind: 'fresh', forecast, expiresAt: now + holdsS, lastModified: null, body: answer.body, note: null }
}

function urlOf({ baseUrl, key, lat, lon }: OpenMeteoRequest): URL {
  const url = under(baseUrl, 'forecast')
  const asked = {
    latitude: fourDecimals(lat),
    longitude: fourDecimals(lon),
    hourly: hourly.join(','),
    timezone: 'UTC',
    past_days: '2',
    forecast_days: '4'
  }
  for (const [name, value] of Object.entries(asked)) url.searchParams.set(name, value)
  if (key !== null) url.searchParams.set('apikey', key)
  return url
}

function down({ status, headers, body }: Answer, { key, now }: OpenMeteoRequest): SourceDown {
  const told = reasonIn(body)
  const reason = told === null || key === null ? told : told.replaceAll(key, '…')
  const message = `${publisher} answered ${status}${reason === null ? '' : `: ${reason}`}`
  const asked = headers.has('retry-after') ? null : limitEnds(status, told, now)
  return new SourceDown(message, status, asked ?? retryAt(status, headers, now))
}

/** When a limit that the service names by its reason ends, in UTC; null for any other. Source: wording of Open-Meteo's errors. */
function limitEnds(status: number, reason: string | null, now: Instant): Instant | null {
  const span = /^(minutely|hourly|daily)\b/i.exec(reason ?? '')?.[1]?.toLowerCase()
  if (status !== 429 || span === undefined) return null
  if (span === 'minutely') return now + 60
  const lengthS = span === 'hourly' ? 3600 : 86_400
  return (Math.floor(now / lengthS) + 1) * lengthS
}
