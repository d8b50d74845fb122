import type { SlackLog } from './log.js'
import type { Loose } from './loose.js'
import { describe } from './problem.js'

/** Sends a reply to the reply address of a payload, which is a secret and never logged. `gone`: a clear no, such as an address that is used up. */
export async function respond(fetch: typeof globalThis.fetch, log: SlackLog, url: string, payload: Loose): Promise<'sent' | 'gone' | 'unknown'> {
  try {
    const answer = await fetch(url, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(payload),
      redirect: 'error'
    })
    await answer.body?.cancel()
    if (answer.ok) return 'sent'
    log.warn({ kind: 'http', status: answer.status }, 'reply address refused')
    return answer.status >= 500 ? 'unknown' : 'gone'
  } catch (error) {
    log.warn(describe(error), 'reply address did not answer')
    return 'unknown'
  }
}
