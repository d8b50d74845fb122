/** What was accepted and is not finished: stopping waits for it, which the framework does not. */
export interface Work {
  /** Keeps a promise until it settles, and hands it back. */
  track<T>(promise: Promise<T>): Promise<T>
  /** Waits until nothing is left, at most so long; the count of what is left. */
  drained(ms: number): Promise<number>
}

export function createWork(): Work {
  const open = new Set<Promise<unknown>>()
  return {
    track: (promise) => {
      const kept = promise.then(
        () => {},
        () => {}
      )
      open.add(kept)
      void kept.then(() => open.delete(kept))
      return promise
    },
    drained: async (ms) => {
      let timer: NodeJS.Timeout | undefined
      const end = new Promise<'late'>((resolve) => {
        timer = setTimeout(() => resolve('late'), ms)
      })
      // What is under way may start more.
      while (open.size > 0) if ((await Promise.race([Promise.all(open), end])) === 'late') break
      clearTimeout(timer)
      return open.size
    }
  }
}

/** The value of a promise if it comes in time, else `late`. The promise itself goes on. */
export async function within<T>(promise: Promise<T>, ms: number): Promise<{ readonly value: T } | 'late'> {
  let timer: NodeJS.Timeout | undefined
  const end = new Promise<'late'>((resolve) => {
    timer = setTimeout(() => resolve('late'), ms)
  })
  try {
    return await Promise.race([promise.then((value) => ({ value })), end])
  } finally {
    clearTimeout(timer)
  }
}
