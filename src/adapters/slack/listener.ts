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
    try {
      inner(request, response)
    } catch {
      // The receiver throws for every path and method but its own.
      refuse(request, response, 404)
    }
  }
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
