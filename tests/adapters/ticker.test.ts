import { expect, test, vi } from 'vitest'
import { startTicker } from '../../src/adapters/ticker.js'

/** A beat by hand. */
function byHand() {
  const beat = { run: (): void => undefined, stopped: false }
  return {
    beat,
    everyMinute: (run: () => void) => {
      beat.run = run
      return {
        stop: () => {
          beat.stopped = true
        }
      }
    }
  }
}

function gate() {
  const waiting: (() => void)[] = []
  return { wait: () => new Promise<void>((resolve) => void waiting.push(resolve)), open: () => waiting.shift()?.() }
}

/** Lets everything that is ready run. */
const settled = () => new Promise((resolve) => setImmediate(resolve))

test('runs at once, then with every beat, with the time it is', async () => {
  const { beat, everyMinute } = byHand()
  const seen: number[] = []
  let now = 100
  const ticker = startTicker(async (at) => void seen.push(at), { now: () => now, failed: () => undefined, everyMinute })
  await settled()
  now = 160
  beat.run()
  await settled()
  expect(seen).toEqual([100, 160])
  await ticker.stop()
  expect(beat.stopped).toBe(true)
})

test('never two at a time: a beat that comes meanwhile is left out', async () => {
  const { beat, everyMinute } = byHand()
  const door = gate()
  let runs = 0
  const run = async () => {
    runs += 1
    await door.wait()
  }
  const ticker = startTicker(run, { now: () => 0, failed: () => undefined, everyMinute })
  beat.run()
  beat.run()
  await settled()
  expect(runs).toBe(1)
  door.open()
  await settled()
  beat.run()
  expect(runs).toBe(2)
  door.open()
  await ticker.stop()
})

test('a run that throws is told, and the ticking goes on', async () => {
  const { beat, everyMinute } = byHand()
  const failures: unknown[] = []
  const error = new Error('away')
  const ticker = startTicker(() => Promise.reject(error), { now: () => 0, failed: (each) => void failures.push(each), everyMinute })
  await settled()
  beat.run()
  await settled()
  expect(failures).toEqual([error, error])
  await ticker.stop()
})

test('stop waits for the run that is under way', async () => {
  const { everyMinute } = byHand()
  const door = gate()
  const order: string[] = []
  const run = async () => {
    await door.wait()
    order.push('done')
  }
  const ticker = startTicker(run, { now: () => 0, failed: () => undefined, everyMinute })
  const stopped = ticker.stop().then(() => order.push('stopped'))
  await settled()
  expect(order).toEqual([])
  door.open()
  await stopped
  expect(order).toEqual(['done', 'stopped'])
})

test('with node-cron itself it starts, catches up and stops', async () => {
  const runs: number[] = []
  const ticker = startTicker(async (at) => void runs.push(at), { now: () => 7, failed: () => undefined })
  await ticker.stop()
  expect(runs).toEqual([7])
})

test('the beat is loaded after the first answers, runs for a minute that began meanwhile, and then every minute', async () => {
  vi.useFakeTimers({ now: Date.parse('2026-05-04T06:00:30Z') })
  try {
    const seen: number[] = []
    const ticker = startTicker(async (at) => void seen.push(at), { now: () => Math.floor(Date.now() / 1000) % 3600, failed: () => undefined })
    await vi.advanceTimersByTimeAsync(4999)
    expect(seen).toEqual([30])
    await vi.advanceTimersByTimeAsync(1)
    await vi.dynamicImportSettled()
    await vi.waitFor(() => expect(seen).toEqual([30, 35]), { interval: 1 })
    await vi.advanceTimersByTimeAsync(120_000)
    expect(seen.slice(2).map((at) => Math.floor(at / 60))).toEqual([1, 2])
    await ticker.stop()
    await vi.advanceTimersByTimeAsync(120_000)
    expect(seen).toHaveLength(4)
  } finally {
    vi.useRealTimers()
  }
})
