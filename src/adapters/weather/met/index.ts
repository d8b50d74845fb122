import type { Instant } from '../../../core/instant.js'
import { makeForecast } from '../../../core/weather/forecast.js'
import { type Asking, askOnce, downOn, expiry, fourDecimals, readHours, under } from '../http.js'
import type { Fetched } from '../live-source.js'
import { metAnswer } from './schema.js'

export const metUrl = 'https://api.met.no/weatherapi/locationforecast/2.0'
const publisher = 'MET Norway'

export interface MetRequest extends Asking {
  readonly baseUrl: string
  readonly lat: number
  readonly lon: number
  /** Of the answer kept; null when there is none. */
  readonly lastModified: string | null
  readonly now: Instant
}

/**
 * Asks MET Norway for a place. The caller keeps away before `expiresAt`; `lastModified` makes it a conditional request.
 * Throws SourceDown for whatever is not a forecast. Terms followed: ≤ 4 decimals, identifying User-Agent, Expires and
 * If-Modified-Since (MET Norway weather API, terms of service). 203 is a forecast of a version that is going away.
 */
export async function fetchMet(request: MetRequest): Promise<Fetched> {
  const { baseUrl, lat, lon, lastModified, now } = request
  const url = under(baseUrl, 'complete')
  url.searchParams.set('lat', fourDecimals(lat))
  url.searchParams.set('lon', fourDecimals(lon))
  const answer = await askOnce({ publisher, url, accept: 'application/json', lastModified }, request)
  const { status, headers, body } = answer
  const expiresAt = expiry(headers, now)
  if (status === 304 && lastModified !== null) return { kind: 'unchanged', expiresAt }
  if (status !== 200 && status !== 203) throw downOn(publisher, answer, now)
  const { issuedAt, hours } = readHours(publisher, metAnswer, body, now)
  const forecast = makeForecast({ source: 'met', issuedAt: issuedAt ?? now, sample: false, hours })
  const note = status === 203 ? `${publisher} answered 203: this version of its service is deprecated or on trial` : null
  return { kind: 'fresh', forecast, expiresAt, lastModified: headers.get('last-modified'), body, note }
}
