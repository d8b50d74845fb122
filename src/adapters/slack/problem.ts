import { RespondError, webApi } from './bolt.js'
import { at, type Loose } from './loose.js'

/** A code of the service (`channel_not_found`): half an answer or a proxy's page comes back in the same place, and is none. */
const codeForm = /^[a-z][a-z0-9_]{2,60}$/

/** The service's own error code; null for anything that is not its clear answer. */
export function serviceCode(error: unknown): string | null {
  if (!(error instanceof webApi.WebAPIPlatformError)) return null
  const code: unknown = error.data.error
  return typeof code === 'string' && codeForm.test(code) ? code : null
}

/** What may be logged of a failed call: codes and the service's hints, never a body, a token or a reply address. */
export function describe(error: unknown): Loose {
  const { WebAPIHTTPError, WebAPIPlatformError, WebAPIRateLimitedError, WebAPIRequestError } = webApi
  if (error instanceof WebAPIPlatformError) {
    const messages = at(error.data, 'response_metadata', 'messages')
    const needed = at(error.data, 'needed')
    return {
      kind: 'refused',
      code: serviceCode(error) ?? 'not-an-answer',
      ...(Array.isArray(messages) ? { messages: messages.map(String) } : {}),
      ...(typeof needed === 'string' ? { needed } : {})
    }
  }
  if (error instanceof WebAPIRateLimitedError) return { kind: 'rate-limited', afterS: error.retryAfter }
  if (error instanceof WebAPIHTTPError || error instanceof RespondError) return { kind: 'http', status: error.statusCode }
  if (error instanceof WebAPIRequestError) return { kind: 'network', why: error.original.name }
  return { kind: 'other', why: error instanceof Error ? error.name : typeof error }
}

/** The framework wraps what a listener threw; this is what was thrown. */
export function unwrapped(error: unknown): unknown {
  const original = at({ error }, 'error') instanceof Error ? (error as Error & { original?: unknown }).original : undefined
  return original instanceof Error ? original : error
}
