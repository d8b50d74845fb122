import type { z } from 'zod'
import type { Instant } from '../../../core/instant.js'
import { type Answer, type Asking, askOnce, downOn, fourDecimals, under } from '../http.js'

export const publisher = 'US NWS'
export const dayS = 86_400
/** A place that is not covered is asked about again after so long, s. Source: common practice, no source. */
export const notCoveredS = 7 * dayS

export interface NwsRequest extends Asking {
  readonly baseUrl: string
  readonly lat: number
  readonly lon: number
  /** What the answer kept came with; null when there is none. */
  readonly note: string | null
}

/** As the service wants a point in its addresses. */
export function pointOf({ lat, lon }: NwsRequest): string {
  return `${fourDecimals(lat)},${fourDecimals(lon)}`
}

export function askNws(request: NwsRequest, path: string, lastModified: string | null): Promise<Answer> {
  return askOnce({ publisher, url: under(request.baseUrl, path), accept: 'application/geo+json', lastModified }, request)
}

/** What the service says of the place itself; null: it does not cover it. Throws SourceDown for whatever is no answer. */
export async function askPoint(request: NwsRequest): Promise<Answer | null> {
  const answer = await askNws(request, `points/${pointOf(request)}`, null)
  if (answer.status === 404) return null
  if (answer.status !== 200) throw downOn(publisher, answer, request.now)
  return answer
}

/** What was handed back to be kept, where it is still of use; null where it is not. */
export function readNote<Kept>({ note, now }: NwsRequest, kept: z.ZodType<Kept>, until: (known: Kept) => Instant): Kept | null {
  if (note === null) return null
  try {
    const known = kept.parse(JSON.parse(note))
    return now < until(known) ? known : null
  } catch {
    return null
  }
}
