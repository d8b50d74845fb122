import type { IncomingMessage, RequestListener, ServerResponse } from 'node:http'
import type { Work } from './work.js'

/** Seconds by which a request's time may be off, either way. */
const mostOffS = 300

/**
 * In front of the framework's receiver, which takes a time in the future: refuses it, and keeps count of what is being answered,
 * so that stopping can wait.
 */
export function guardedListener(inner: RequestListener, work: Work, nowS: () => number): RequestListener {
  return (request, response) => {
    if (!inTime(request, nowS())) return refuse(request, response, 401)
    void work.track(new Promise<void>((resolve) => response.once('close', () => resolve())))
    keepNothingOut(request)
    try {
      inner(request, response)
    } catch {
      // The receiver throws for every path and method but its own.
      refuse(request, response, 404)
    }
  }
}

/**
 * The receiver looks into the body outside of anything that catches: JSON that is `null` would be an unhandled rejection, which ends the
 * process, and no answer. It puts what it has read into `rawBody`: such a body is taken for an empty one there, and refused.
 */
function keepNothingOut(request: IncomingMessage): void {
  let raw: unknown
  Object.defineProperty(request, 'rawBody', {
    enumerable: true,
    get: () => raw,
    set: (body: unknown) => {
      raw = Buffer.isBuffer(body) && isNothing(body) ? Buffer.alloc(0) : body
    }
  })
}

function isNothing(body: Buffer): boolean {
  // A longer one holds something: it need not be looked through.
  if (body.length > 1000) return false
  const text = body.toString('utf8')
  return text.trim() === 'null' || new URLSearchParams(text).get('payload')?.trim() === 'null'
}

/** A request without a time is left to the receiver: it refuses all but the service's check of the certificate. */
function inTime({ headers }: IncomingMessage, nowS: number): boolean {
  const sent = headers['x-slack-request-timestamp']
  return sent === undefined || Math.abs(nowS - Number(sent)) <= mostOffS
}

function refuse(request: IncomingMessage, response: ServerResponse, status: number): void {
  request.resume()
  if (!response.headersSent) response.writeHead(status)
  response.end()
}
