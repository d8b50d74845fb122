import { isAway } from './outside.js'
import type { Kind } from './schema.js'

/** Milliseconds before each further try, some six seconds in all: as long as another server needs to take over. */
const waitsMs = [50, 100, 200, 400, 800, 1500, 3000]

/**
 * Runs something that may be run twice: again while the database is away. On SQLite, which does not go away, once.
 */
export async function again<T>(kind: Kind, run: () => Promise<T>): Promise<T> {
  if (kind === 'sqlite') return run()
  for (const ms of waitsMs) {
    try {
      return await run()
    } catch (error) {
      if (!isAway(error)) throw error
    }
    await new Promise((wait) => setTimeout(wait, ms))
  }
  return run()
}
