/** Numbers every change, and wakes those who wait for the next one. */
export interface Changes {
  readonly seq: () => number
  readonly bump: () => number
  /** Resolves when there is something after `since`, or when the time is up or the room closes. */
  readonly wait: (since: number, ms: number) => Promise<void>
  readonly close: () => void
}

export function createChanges(): Changes {
  let seq = 1
  let closed = false
  const waiting = new Set<() => void>()
  const wake = () => {
    for (const resolve of [...waiting]) resolve()
  }
  return {
    seq: () => seq,
    bump: () => {
      seq += 1
      wake()
      return seq
    },
    wait: (since, ms) =>
      new Promise((resolve) => {
        if (closed || seq > since) return resolve()
        const done = () => {
          clearTimeout(timer)
          waiting.delete(done)
          resolve()
        }
        const timer = setTimeout(done, ms)
        waiting.add(done)
      }),
    close: () => {
      closed = true
      wake()
    }
  }
}
