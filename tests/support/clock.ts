import { vi } from 'vitest'

/**
 * A clock that goes on from an instant of the test's choosing, for this process only: Date alone is moved, timers stay real, so
 * that servers, signatures and lifetimes all see the same time.
 */
export function movedClock(iso: string): { set(iso: string): void; stop(): void } {
  let base = Date.parse(iso)
  let from = performance.now()
  vi.useFakeTimers({ toFake: ['Date'], now: base })
  const beat = setInterval(() => vi.setSystemTime(base + performance.now() - from), 20)
  return {
    set: (to) => {
      base = Date.parse(to)
      from = performance.now()
      vi.setSystemTime(base)
    },
    stop: () => {
      clearInterval(beat)
      vi.useRealTimers()
    }
  }
}
