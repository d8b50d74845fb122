import { DateTime } from 'luxon'
import { z } from 'zod'
import type { Instant } from '../../core/instant.js'
import { boundedText, mostBytesText, mostHours } from './bounds.js'
import { firstProblems, inShort } from './fields.js'
import type { Parsed } from './parsed.js'
import { SourceDown } from './source-down.js'

/** Times to wait before a source is asked again, seconds. Source: common practice, no source. */
export const waitS = { soon: 300, throttled: 900, refused: 3600 } as const

/** How long an answer is kept where its source says nothing, and at least and at most, seconds. */
export interface Keeping {
  readonly untold: number
  readonly least: number
  readonly most: number
}

/** For forecasts. Source: common practice, no source. */
const forecastS: Keeping = { untold: 1800, least: 60, most: 6 * 3600 }

/** How a source is asked: by whom, with what, when. */
export interface Asking {
  /** E-mail or URL: the services refuse those who do not say who they are. */
  readonly contact: string
  readonly version: string
  readonly fetch: typeof fetch
  readonly now: Instant
  readonly timeoutMs?: number
}

export interface Question {
  /** Whose service it is, for messages. */
  readonly publisher: string
  readonly url: URL
  readonly accept: string
  /** Makes it a conditional request; null for a plain one. */
  readonly lastModified: string | null
}

export interface Answer {
  readonly status: number
  readonly headers: Headers
  readonly body: string
}

/** Asks once. Throws SourceDown when there is no answer; its message never holds the address, which may carry a key. */
export async function askOnce({ publisher, url, accept, lastModified }: Question, asking: Asking): Promise<Answer> {
  const headers: Record<string, string> = { accept, 'user-agent': `seamhand/${asking.version} ${asking.contact}` }
  if (lastModified !== null) headers['if-modified-since'] = lastModified
  const down = (problem: string, status: number | null) => new SourceDown(`${publisher}${problem}`, status, asking.now + waitS.soon)
  try {
    const answer = await asking.fetch(url, { headers, redirect: 'error', signal: AbortSignal.timeout(asking.timeoutMs ?? 10_000) })
    const body = await boundedText(answer.body)
    if (body === null) throw down(`: answer is larger than ${mostBytesText}`, answer.status)
    return { status: answer.status, headers: answer.headers, body }
  } catch (error) {
    if (error instanceof SourceDown) throw error
    throw down(` cannot be reached: ${codeOf(error)}`, null)
  }
}

/** The body of an answer → hours with at least one temperature. Throws SourceDown for anything else. */
export function readHours(publisher: string, answer: z.ZodType<Parsed>, body: string, now: Instant): Parsed {
  const read = answer.safeParse(readJson(publisher, body, now))
  const down = (problem: string) => new SourceDown(`${publisher}: ${problem}`, 200, now + waitS.soon)
  if (!read.success) throw down(`answer is malformed: ${firstProblems(read.error)}`)
  if (read.data.hours.length === 0) throw down('answer holds no hours')
  if (read.data.hours.length > mostHours) throw down(`answer holds more than ${mostHours} hours`)
  if (read.data.hours.every((hour) => hour.airC === null)) throw down('answer holds no temperature')
  return read.data
}

/** The body of an answer as JSON. Throws SourceDown where it is none. */
export function readJson(publisher: string, body: string, now: Instant): unknown {
  try {
    return JSON.parse(body)
  } catch {
    throw new SourceDown(`${publisher}: answer is not JSON`, 200, now + waitS.soon)
  }
}

/** The error for a status that brings no forecast, with the reason the service gives. */
export function downOn(publisher: string, { status, headers, body }: Answer, now: Instant): SourceDown {
  const reason = reasonIn(body)
  return new SourceDown(`${publisher} answered ${status}${reason === null ? '' : `: ${reason}`}`, status, retryAt(status, headers, now))
}

const problem = z.object({ title: z.string().nullish(), reason: z.string().nullish() })

/** The one sentence of an error body: `title` of problem+json (RFC 9457), or `reason`; null where there is none. */
export function reasonIn(body: string): string | null {
  try {
    const { title, reason } = problem.parse(JSON.parse(body))
    const told = title ?? reason ?? null
    return told === null ? null : inShort(told)
  } catch {
    return null
  }
}

/** Instant before which an answer need not be asked for again: the later of `max-age` and `Expires`. Source: RFC 9111 §4.2. */
export function expiry(headers: Headers, now: Instant, { untold, least, most }: Keeping = forecastS): Instant {
  const maxAge = /(?:^|[\s,])max-age="?(\d{1,9})\b/i.exec(headers.get('cache-control') ?? '')?.[1]
  const aged = /^\d{1,9}$/.test(headers.get('age') ?? '') ? Number(headers.get('age')) : 0
  const told = [maxAge === undefined ? null : now + Number(maxAge) - aged, httpDate(headers.get('expires'))].filter((at) => at !== null)
  const until = told.length === 0 ? now + untold : Math.max(...told)
  return Math.min(Math.max(until, now + least), now + most)
}

/** When to come back after a refusal: by `Retry-After`, else by the kind of refusal. */
export function retryAt(status: number, headers: Headers, now: Instant): Instant {
  const asked = headers.get('retry-after') ?? ''
  const told = /^\d{1,6}$/.test(asked) ? now + Number(asked) : httpDate(asked)
  if (told !== null && told > now) return told
  if (status === 429) return now + waitS.throttled
  return now + (status >= 500 ? waitS.soon : waitS.refused)
}

/** At most 4 decimals, no zeros at the end: the services refuse or redirect anything else. */
export function fourDecimals(degrees: number): string {
  return String(Math.round(degrees * 1e4) / 1e4 + 0)
}

/** A path under a base address, whether that ends in a slash or not. */
export function under(baseUrl: string, path: string): URL {
  return new URL(`${baseUrl.replace(/\/+$/, '')}/${path}`)
}

function httpDate(text: string | null): Instant | null {
  const read = DateTime.fromHTTP(text ?? '')
  return read.isValid ? Math.floor(read.toSeconds()) : null
}

/** A word for what went wrong: the texts of network errors may repeat the address. */
function codeOf(error: unknown): string {
  const read = z.object({ name: z.string(), code: z.unknown(), cause: z.object({ code: z.unknown() }).nullish().catch(null) }).safeParse(error)
  if (!read.success) return 'unknown'
  const code = read.data.cause?.code ?? read.data.code
  return typeof code === 'string' ? code : read.data.name
}
