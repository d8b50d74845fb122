import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'

setFlagsFromString('--expose_gc')
const collect = runInNewContext('gc') as () => void

/** Bytes in use on the heap and beside it, after everything that nobody holds was let go. */
export async function heldBytes(): Promise<number> {
  for (let i = 0; i < 4; i += 1) {
    collect()
    await new Promise((resolve) => setImmediate(resolve))
  }
  const { heapUsed, external } = process.memoryUsage()
  return heapUsed + external
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
