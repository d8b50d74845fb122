import { isBusy } from './outside.js'

/** How long SQLite itself may wait for a lock, in ms: it blocks the whole process meanwhile. */
export const blockingMs = 10
const pauseMs = 10

export type Patiently = <T>(run: () => T | Promise<T>) => Promise<T>

/**
 * Tries again while another connection holds the file, for about `busyMs`, and lets the rest of the process go on in between:
 * a lock may be held by this very process.
 */
export function patience(busyMs: number): Patiently {
  const tries = Math.ceil(busyMs / pauseMs)
  return async (run) => {
    for (let tried = 1; tried < tries; tried += 1) {
      try {
        return await run()
      } catch (error) {
        if (!isBusy(error)) throw error
      }
      await new Promise((wake) => setTimeout(wake, pauseMs))
    }
    return run()
  }
}
