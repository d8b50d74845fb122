import type { IncomingMessage, ServerResponse } from 'node:http'
import type { Loose } from './types.js'

/** Ends a request with a status and a word. */
export class HttpError extends Error {
  override readonly name = 'HttpError'
  constructor(
    readonly status: number,
    readonly code: string
  ) {
    super(code)
  }
}

/** Never from a cache: what is here is of this moment and this machine. */
const always = {
  'cache-control': 'no-store',
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-resource-policy': 'same-origin'
}

export function send(res: ServerResponse, status: number, type: string, body: string | Buffer, headers: Readonly<Record<string, string>> = {}): void {
  res.writeHead(status, { ...always, 'content-type': type, 'content-length': Buffer.byteLength(body), ...headers })
  res.end(body)
}

export function sendJson(res: ServerResponse, status: number, value: unknown, headers: Readonly<Record<string, string>> = {}): void {
  send(res, status, 'application/json; charset=utf-8', JSON.stringify(value), headers)
}

/** The whole body, or 413: no more than the limit is held. */
export async function readBody(req: IncomingMessage, most: number): Promise<Buffer> {
  const parts: Buffer[] = []
  let size = 0
  for await (const part of req as AsyncIterable<Buffer>) {
    size += part.length
    if (size > most) throw new HttpError(413, 'too-large')
    parts.push(part)
  }
  return Buffer.concat(parts)
}

export async function readJson(req: IncomingMessage, most: number): Promise<Loose> {
  const body = await readBody(req, most)
  try {
    const value: unknown = JSON.parse(body.toString('utf8'))
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Loose
  } catch {
    throw new HttpError(400, 'bad-json')
  }
  throw new HttpError(400, 'bad-json')
}

/** A form of either encoding. */
export async function readForm(type: string, body: Buffer): Promise<FormData | URLSearchParams> {
  if (!type.startsWith('multipart/form-data')) return new URLSearchParams(body.toString('utf8'))
  return new Response(new Uint8Array(body), { headers: { 'content-type': type } }).formData()
}

const loopback = ['127.0.0.1', 'localhost', '[::1]']

/**
 * Whether a request may be the page's own: Host is loopback with the port of this server, and Origin, if sent, is that Host's.
 * A page elsewhere, or a name that was pointed at this machine, passes neither.
 */
export function isOwn(req: IncomingMessage, base: string): boolean {
  const { port } = new URL(base)
  const host = (req.headers.host ?? '').toLowerCase()
  const known = loopback.some((name) => host === (port === '' ? name : `${name}:${port}`))
  const { origin } = req.headers
  return known && (origin === undefined || origin.toLowerCase() === `http://${host}`)
}
