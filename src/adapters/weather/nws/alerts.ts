import { z } from 'zod'
import type { FetchedAlerts } from '../alert-source.js'
import { firstProblems } from '../fields.js'
import { downOn, expiry, type Keeping, readJson, waitS } from '../http.js'
import { SourceDown } from '../source-down.js'
import { nwsAlertsAnswer } from './alerts-schema.js'
import { askNws, askPoint, dayS, type NwsRequest, notCoveredS, pointOf, publisher, readNote } from './ask.js'

/** A warning of a thunderstorm is out some 15 min before it comes: no longer than this, and no sooner, s. Source: common practice, no source. */
const alertsS: Keeping = { untold: 300, least: 240, most: 300 }
/** A place that is covered stays so for long. Source: common practice, no source. */
const coveredS = 30 * dayS

/** What is handed back at the next fetch: until when the place is known to be covered, and the time of the answer kept. */
const kept = z.object({ coveredUntil: z.number(), lastModified: z.string().nullable() })
type Kept = z.infer<typeof kept>

/**
 * Asks the US National Weather Service for the alerts in force at a place: first whether it covers the place at all, unless that is
 * known, since elsewhere it has none and says so; conditionally where an answer is kept. Throws SourceDown for whatever is no answer.
 * Source: US NWS API, OpenAPI 3.8.1.
 */
export async function fetchNwsAlerts(request: NwsRequest): Promise<FetchedAlerts> {
  const { now } = request
  const known = readNote(request, kept, ({ coveredUntil }) => coveredUntil)
  if (known === null && (await askPoint(request)) === null) return { kind: 'fresh', all: null, expiresAt: now + notCoveredS, note: null }
  const answer = await askNws(request, `alerts/active?point=${pointOf(request)}`, known?.lastModified ?? null)
  const { status, headers, body } = answer
  const expiresAt = expiry(headers, now, alertsS)
  if (status === 304 && known !== null && known.lastModified !== null) return { kind: 'unchanged', expiresAt }
  if (status !== 200) throw downOn(publisher, answer, now)
  const read = nwsAlertsAnswer.safeParse(readJson(publisher, body, now))
  if (!read.success) throw new SourceDown(`${publisher}: alerts are malformed: ${firstProblems(read.error)}`, 200, now + waitS.soon)
  const next: Kept = { coveredUntil: known?.coveredUntil ?? now + coveredS, lastModified: headers.get('last-modified') }
  return { kind: 'fresh', all: read.data, expiresAt, note: JSON.stringify(next) }
}
