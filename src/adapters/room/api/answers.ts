import type { Refused } from '../check/index.js'
import type { Loose } from '../types.js'
import type { World } from '../world.js'

/** One method of the service: its arguments as objects, its answer with `ok`. */
export type Method = (world: World, args: Loose) => Promise<Loose>

export function ok(fields: Loose = {}): Loose {
  return { ok: true, ...fields }
}

export function fail(error: string): Loose {
  return { ok: false, error }
}

/** With the messages where the service gives them. */
export function failRefused(refused: Refused): Loose {
  const { error, messages } = refused
  return messages.length === 0 ? fail(error) : { ok: false, error, errors: messages, response_metadata: { messages } }
}
