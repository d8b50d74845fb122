import { getHeapCodeStatistics, setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { dayMarks, daysOn, localDate } from '../../../src/core/instant.js'

setFlagsFromString('--expose_gc')
const collect = runInNewContext('gc') as () => void

/** What `core/instant.ts` keeps at most: offsets and days by zone, and dates. */
const [mostOffsets, mostDates] = [2000, 1000]

/**
 * Fills what is kept of the calendar to the brim with the same keys. It fills for some twenty days and is then thrown away at once, so that
 * memory would rise and fall by its size. Twice, since the first time may throw it away halfway; then every key is there and none more.
 */
function fillCalendars(): void {
  for (const _ of [1, 2]) {
    for (let i = 0; i < mostOffsets; i += 1) localDate(i * 900, 'UTC')
    for (let i = 0; i < mostOffsets; i += 1) dayMarks(daysOn('1970-01-01', i), 'UTC')
  }
  for (const _ of [1, 2]) for (let i = 0; i < mostDates; i += 1) daysOn('1970-01-01', i)
}

export interface Held {
  /** Data: on the heap and beside it, without what the engine compiled. */
  readonly bytes: number
  /** Machine code, bytecode and what belongs to them: the engine compiles what runs often, for weeks, and throws it away when it wants. */
  readonly codeBytes: number
}

/** What is in use after everything that nobody holds was let go. */
export async function heldNow(): Promise<Held> {
  fillCalendars()
  for (let i = 0; i < 4; i += 1) {
    collect()
    await new Promise((resolve) => setImmediate(resolve))
  }
  const { heapUsed, external } = process.memoryUsage()
  const { code_and_metadata_size, bytecode_and_metadata_size } = getHeapCodeStatistics()
  const codeBytes = code_and_metadata_size + bytecode_and_metadata_size
  return { bytes: heapUsed + external - codeBytes, codeBytes }
}

/** Slope of a least-squares line through values that are one apart. */
export function slopeOf(values: readonly number[]): number {
  const middle = (values.length - 1) / 2
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length
  const above = values.reduce((sum, value, i) => sum + (i - middle) * (value - mean), 0)
  const below = values.reduce((sum, _, i) => sum + (i - middle) ** 2, 0)
  return below === 0 ? 0 : above / below
}

/** Timers, sockets and the like that keep the process going. */
export function resources(): number {
  return process.getActiveResourcesInfo().length
}
