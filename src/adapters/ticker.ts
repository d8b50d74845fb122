import type { Instant } from '../core/instant.js'

export interface TickerPorts {
  readonly now: () => Instant
  readonly failed: (error: unknown) => void
  /** Calls once a minute until stopped; node-cron in UTC unless a test has its own. */
  readonly everyMinute?: (run: () => void) => { stop(): void }
}

export interface Ticker {
  /** Ends the ticking; waits for a tick that is running. */
  stop(): Promise<void>
}

/**
 * Runs once at once, to catch up, and then once a minute. Never two at a time: a minute that comes while one still runs is
 * left out, the next one sees all that is due. What a run throws is told and the ticking goes on.
 */
export function startTicker(run: (now: Instant) => Promise<unknown>, ports: TickerPorts): Ticker {
  let running: Promise<void> | null = null
  async function once(): Promise<void> {
    try {
      await run(ports.now())
    } catch (error) {
      ports.failed(error)
    } finally {
      running = null
    }
  }
  function begin(): void {
    running ??= once()
  }
  begin()
  const ticking = (ports.everyMinute ?? cron)(begin)
  return {
    stop: async () => {
      ticking.stop()
      await running
    }
  }
}

/** The first tick needs no beat, and the first answer is not to wait until it is loaded. */
const beatAfterMs = 5000

/**
 * Nothing but the beat: the zones of node-cron skip and repeat hours, and it recovers nothing. It begins with a run of its own, for a
 * minute that has begun meanwhile.
 */
function cron(run: () => void): { stop(): void } {
  let stopped = false
  let task: { destroy(): unknown } | null = null
  const waiting = setTimeout(async () => {
    const { schedule } = await import('node-cron')
    if (stopped) return
    task = schedule('* * * * *', run, { timezone: 'UTC' })
    run()
  }, beatAfterMs)
  return {
    stop: () => {
      stopped = true
      clearTimeout(waiting)
      task?.destroy()
    }
  }
}
