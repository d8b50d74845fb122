import { createHmac } from 'node:crypto'
import { request } from 'node:http'
import type { Settings } from './settings.js'
import type { Loose } from './types.js'
import { type RoomLang, roomSays } from './words/index.js'

/** What the app answered in time, or why there is no answer. */
export type Delivered =
  | { readonly kind: 'answer'; readonly status: number; readonly body: string; readonly noRetry: boolean }
  | { readonly kind: 'silence' }
  | { readonly kind: 'broken'; readonly why: string }

export type Deliver = (type: 'form' | 'json', body: string, headers?: Readonly<Record<string, string>>) => Promise<Delivered>

/** Exactly these: the app compares them as they stand. */
const contentTypes = { form: 'application/x-www-form-urlencoded', json: 'application/json' } as const

/** Hands a payload to the app, signed (v0: HMAC-SHA256 over `v0:TS:BODY`), on a connection of its own, and waits as long as the service would. */
export function createDeliver(settings: Settings): Deliver {
  return (type, body, headers = {}) =>
    new Promise((resolve) => {
      const ts = String(Math.floor(settings.now() / 1000))
      const signature = `v0=${createHmac('sha256', settings.signingSecret).update(`v0:${ts}:${body}`).digest('hex')}`
      const sent = request(`${settings.base()}/slack/events`, {
        method: 'POST',
        agent: false,
        headers: {
          'content-type': contentTypes[type],
          'content-length': Buffer.byteLength(body),
          'x-slack-request-timestamp': ts,
          'x-slack-signature': signature,
          'user-agent': 'seamhand-local-room',
          connection: 'close',
          ...headers
        }
      })
      const end = (delivered: Delivered) => {
        clearTimeout(timer)
        resolve(delivered)
        sent.destroy()
      }
      const timer = setTimeout(() => end({ kind: 'silence' }), settings.timing.deadlineMs)
      sent.on('error', (error) => end({ kind: 'broken', why: error.message }))
      sent.on('response', (response) => {
        const parts: Buffer[] = []
        response.on('data', (part: Buffer) => parts.push(part))
        response.on('error', (error) => end({ kind: 'broken', why: error.message }))
        response.on('end', () => {
          end({
            kind: 'answer',
            status: response.statusCode ?? 0,
            body: Buffer.concat(parts).toString('utf8'),
            noRetry: response.headers['x-slack-no-retry'] === '1'
          })
        })
      })
      sent.end(body)
    })
}

/** What a person is told when the app gave no good answer; null when it did. */
export function failureOf(delivered: Delivered, deadlineMs: number, lang: RoomLang): string | null {
  if (delivered.kind === 'silence') return roomSays(lang, 'whySilent', { seconds: deadlineMs / 1000 })
  if (delivered.kind === 'broken') return roomSays(lang, 'whyBroken', { why: delivered.why })
  return delivered.status >= 200 && delivered.status < 300 ? null : roomSays(lang, 'whyStatus', { status: delivered.status })
}

/** An answer's JSON object; null for an empty one or anything else. */
export function jsonOf(body: string): Loose | null {
  try {
    const value: unknown = JSON.parse(body)
    return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Loose) : null
  } catch {
    return null
  }
}
