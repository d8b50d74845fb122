import { DateTime } from 'luxon'
import type { Instant } from '../../../core/instant.js'
import { makeForecast } from '../../../core/weather/forecast.js'
import { firstProblems } from '../fields.js'
import type { Fetched } from '../live-source.js'
import { SourceDown } from '../source-down.js'
import { metAnswer } from './schema.js'

export const metUrl = 'https://api.met.no/weatherapi/locationforecast/2.0'

/** Times to wait before the source is asked again, seconds. Source: common practice, no source. */
const waitS = { soon: 300, throttled: 900, refused: 3600, noExpires: 1800, least: 60 } as const

export interface MetRequest {
  readonly baseUrl: string
  /** E-mail or URL: the service refuses those who do not say who they are. */
  readonly contact: string
  readonly version: string
  readonly fetch: typeof fetch
  readonly lat: number
  readonly lon: number
  /** Of the answer kept; null when there is none. */
  readonly lastModified: string | null
  readonly now: Instant
  readonly timeoutMs?: number
}

/**
 * Asks MET Norway for a place. The caller keeps away before `expiresAt`; `lastModified` makes it a conditional request.
 * Throws SourceDown for whatever is not a forecast. Terms followed: ≤ 4 decimals, identifying User-Agent, Expires and
 * If-Modified-Since (MET Norway weather API, terms of service).
 */
export async function fetchMet(request: MetRequest): Promise<Fetched> {
  const { status, headers, body } = await get(request)
  const expiresAt = expiry(headers, request.now)
  if (status === 304 && request.lastModified !== null) return { kind: 'unchanged', expiresAt }
  if (status !== 200) throw new SourceDown(`MET Norway answered ${status}`, status, retryAt(status, headers, request.now))
  const { issuedAt, hours } = read(body, request.now)
  const forecast = makeForecast({ source: 'met', issuedAt: issuedAt ?? request.now, sample: false, hours })
  return { kind: 'fresh', forecast, expiresAt, lastModified: headers.get('last-modified'), body }
}

interface Answer {
  readonly status: number
  readonly headers: Headers
  readonly body: string
}

async function get(request: MetRequest): Promise<Answer> {
  const url = new URL(`${request.baseUrl.replace(/\/+$/, '')}/complete`)
  url.searchParams.set('lat', fourDecimals(request.lat))
  url.searchParams.set('lon', fourDecimals(request.lon))
  const headers: Record<string, string> = { accept: 'application/json', 'user-agent': `seamhand/${request.version} ${request.contact}` }
  if (request.lastModified !== null) headers['if-modified-since'] = request.lastModified
  try {
    const answer = await request.fetch(url, { headers, redirect: 'error', signal: AbortSignal.timeout(request.timeoutMs ?? 10_000) })
    return { status: answer.status, headers: answer.headers, body: await answer.text() }
  } catch (cause) {
    throw new SourceDown('MET Norway cannot be reached', null, request.now + waitS.soon, cause)
  }
}

function read(body: string, now: Instant) {
  const down = (problem: string, cause?: unknown) => new SourceDown(`MET Norway: ${problem}`, 200, now + waitS.soon, cause)
  let told: unknown
  try {
    told = JSON.parse(body)
  } catch (cause) {
    throw down('answer is not JSON', cause)
  }
  const parsed = metAnswer.safeParse(told)
  if (!parsed.success) throw down(`answer is malformed: ${firstProblems(parsed.error)}`)
  if (parsed.data.hours.length === 0) throw down('answer holds no hours')
  return parsed.data
}

function expiry(headers: Headers, now: Instant): Instant {
  const told = httpDate(headers.get('expires'))
  return Math.max(told ?? now + waitS.noExpires, now + waitS.least)
}

function retryAt(status: number, headers: Headers, now: Instant): Instant {
  const asked = headers.get('retry-after') ?? ''
  const told = /^\d{1,6}$/.test(asked) ? now + Number(asked) : httpDate(asked)
  if (told !== null && told > now) return told
  if (status === 429) return now + waitS.throttled
  return now + (status >= 500 ? waitS.soon : waitS.refused)
}

function httpDate(text: string | null): Instant | null {
  const read = DateTime.fromHTTP(text ?? '')
  return read.isValid ? Math.floor(read.toSeconds()) : null
}

function fourDecimals(degrees: number): string {
  return String(Math.round(degrees * 1e4) / 1e4 + 0)
}
