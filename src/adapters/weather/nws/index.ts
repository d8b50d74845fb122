import { z } from 'zod'
import { makeForecast } from '../../../core/weather/forecast.js'
import { type Answer, downOn, expiry, type Keeping, readHours, readJson, waitS } from '../http.js'
import type { Fetched } from '../live-source.js'
import { SourceDown } from '../source-down.js'
import { askNws, askPoint, dayS, type NwsRequest, notCoveredS, publisher, readNote } from './ask.js'
import { nwsAnswer } from './schema.js'

export const nwsUrl = 'https://api.weather.gov'
/** A place lies in the same grid square for long, but squares are drawn anew now and then. Source: common practice, no source. */
const gridS: Keeping = { untold: dayS, least: dayS, most: 30 * dayS }

/** Office and square: what stays of the grid address. The host is always the one of the settings. */
const grid = z.string().regex(/^[A-Z]{3}\/\d{1,4},\d{1,4}$/)

/** What is handed back at the next fetch: which square the place lies in, and until when that need not be asked again. */
const kept = z.object({ grid, gridUntil: z.number(), lastModified: z.string().nullable() })
type Kept = z.infer<typeof kept>

/**
 * Asks the US National Weather Service for a place: first which grid square it lies in, unless that is known, then for the
 * forecast of the square, conditionally where one is kept. Throws SourceDown for whatever is not a forecast, also for a place
 * that is not covered. Source: US NWS API documentation, OpenAPI 1.9.0.
 */
export async function fetchNws(request: NwsRequest): Promise<Fetched> {
  const known = readNote(request, kept, ({ gridUntil }) => gridUntil)
  if (known !== null) {
    const answer = await askNws(request, `gridpoints/${known.grid}`, known.lastModified)
    // The square may have been drawn anew since: asked for below.
    if (answer.status !== 404) return fetchedFrom(request, answer, known)
  }
  const found = await gridOf(request)
  return fetchedFrom(request, await askNws(request, `gridpoints/${found.grid}`, null), found)
}

function fetchedFrom({ now }: NwsRequest, answer: Answer, { grid, gridUntil, lastModified }: Kept): Fetched {
  const { status, headers, body } = answer
  const expiresAt = expiry(headers, now)
  if (status === 304 && lastModified !== null) return { kind: 'unchanged', expiresAt }
  if (status !== 200) throw downOn(publisher, answer, now)
  const { issuedAt, hours } = readHours(publisher, nwsAnswer, body, now)
  const forecast = makeForecast({ source: 'nws', issuedAt: issuedAt ?? now, sample: false, hours })
  const next: Kept = { grid, gridUntil, lastModified: headers.get('last-modified') }
  return { kind: 'fresh', forecast, expiresAt, lastModified: JSON.stringify(next), body, note: null }
}

const point = z.object({ properties: z.object({ forecastGridData: z.string().nullish() }) })

async function gridOf(request: NwsRequest): Promise<Kept> {
  const { now } = request
  const answer = await askPoint(request)
  const notCovered = new SourceDown(`${publisher} does not cover this place`, 404, now + notCoveredS)
  if (answer === null) throw notCovered
  const read = point.safeParse(readJson(publisher, answer.body, now))
  const told = read.data?.properties.forecastGridData
  if (read.success && !told) throw notCovered
  const found = grid.safeParse(told?.split('/gridpoints/')[1])
  if (!found.success) throw new SourceDown(`${publisher}: answer names no grid square`, 200, now + waitS.soon)
  return { grid: found.data, gridUntil: expiry(answer.headers, now, gridS), lastModified: null }
}
