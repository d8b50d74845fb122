import { z } from 'zod'
import type { FetchedAlerts } from '../alert-source.js'
import { firstProblems } from '../fields.js'
import { type Answer, type Asking, askOnce, downOn, expiry, fourDecimals, type Keeping, readJson, under, waitS } from '../http.js'
import { SourceDown } from '../source-down.js'
import { nwsAlertsAnswer } from './alerts-schema.js'

const publisher = 'US NWS'
const dayS = 86_400
/** A warning of a thunderstorm is out some 15 min before it comes: no longer than this, and no sooner, s. */
const alertsS: Keeping = { untold: 300, least: 240, most: 300 }
/** A place is covered for good, or for long not. */
const coveredS = 30 * dayS
const notCoveredS = 7 * dayS

/** What is handed back at the next fetch: until when the place is known to be covered, and the time of the answer kept. */
const kept = z.object({ coveredUntil: z.number(), lastModified: z.string().nullable() })
type Kept = z.infer<typeof kept>

export interface NwsAlertsRequest extends Asking {
  readonly baseUrl: string
  readonly lat: number
  readonly lon: number
  /** `note` of the answer kept; null when there is none. */
  readonly note: string | null
}

/**
 * Asks the US National Weather Service for the alerts in force at a place: first whether it covers the place at all, unless that is
 * known, since elsewhere it has none and says so; conditionally where an answer is kept. Throws SourceDown for whatever is no answer.
 * Source: US NWS API, OpenAPI 3.8.1.
 */
export async function fetchNwsAlerts(request: NwsAlertsRequest): Promise<FetchedAlerts> {
  const { now, lat, lon } = request
  const known = readNote(request)
  if (known === null && !(await isCovered(request))) return { kind: 'fresh', all: null, expiresAt: now + notCoveredS, note: null }
  const point = `${fourDecimals(lat)},${fourDecimals(lon)}`
  const answer = await get(request, `alerts/active?point=${point}`, known?.lastModified ?? null)
  const { status, headers, body } = answer
  const expiresAt = expiry(headers, now, alertsS)
  if (status === 304 && known !== null && known.lastModified !== null) return { kind: 'unchanged', expiresAt }
  if (status !== 200) throw downOn(publisher, answer, now)
  const read = nwsAlertsAnswer.safeParse(readJson(publisher, body, now))
  if (!read.success) throw new SourceDown(`${publisher}: alerts are malformed: ${firstProblems(read.error)}`, 200, now + waitS.soon)
  const next: Kept = { coveredUntil: known?.coveredUntil ?? now + coveredS, lastModified: headers.get('last-modified') }
  return { kind: 'fresh', all: read.data, expiresAt, note: JSON.stringify(next) }
}

async function isCovered(request: NwsAlertsRequest): Promise<boolean> {
  const answer = await get(request, `points/${fourDecimals(request.lat)},${fourDecimals(request.lon)}`, null)
  if (answer.status === 404) return false
  if (answer.status !== 200) throw downOn(publisher, answer, request.now)
  return true
}

function get(request: NwsAlertsRequest, path: string, lastModified: string | null): Promise<Answer> {
  return askOnce({ publisher, url: under(request.baseUrl, path), accept: 'application/geo+json', lastModified }, request)
}

function readNote({ note, now }: NwsAlertsRequest): Kept | null {
  if (note === null) return null
  try {
    const known = kept.parse(JSON.parse(note))
    return now < known.coveredUntil ? known : null
  } catch {
    return null
  }
}
