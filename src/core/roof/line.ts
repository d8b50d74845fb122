import type { Instant } from '../instant.js'
import type { Hour } from '../weather/hour.js'

const hourS = 3600
/** Widest gap bridged in a straight line: the 6-hour steps of the later days. */
const bridgeS = 6 * hourS
/** Beyond a gap too wide, and beyond the last value, a value is held this long. */
const holdS = 3 * hourS

export interface Line {
  /** NaN where nothing is known. */
  readonly value: Float64Array
  /** Hours that a value has only been held. */
  readonly heldH: Float64Array
}

/** Values that are instants, at full hours from `startAt` on, from hours in order of time. One pass over both. */
export function line(hours: readonly Hour[], of: (hour: Hour, index: number) => number | null, startAt: Instant, count: number): Line {
  const value = new Float64Array(count).fill(Number.NaN)
  const heldH = new Float64Array(count)
  let leftAt = Number.NEGATIVE_INFINITY
  let left = Number.NaN
  let next = 0
  for (let index = 0; index < hours.length; index += 1) {
    const hour = hours[index] as Hour
    const right = of(hour, index)
    if (right === null) continue
    const bridged = hour.at - leftAt <= bridgeS
    for (; next < count && startAt + next * hourS < hour.at; next += 1) {
      const at = startAt + next * hourS
      if (bridged) value[next] = left + ((right - left) * (at - leftAt)) / (hour.at - leftAt)
      else hold(at)
    }
    leftAt = hour.at
    left = right
  }
  for (; next < count; next += 1) hold(startAt + next * hourS)
  return { value, heldH }

  function hold(at: Instant): void {
    if (at - leftAt > holdS) return
    value[next] = left
    heldH[next] = (at - leftAt) / hourS
  }
}

/** Values of the hour that begins at each full hour; NaN where it is not told. */
export function ofHour(hours: readonly Hour[], of: (hour: Hour) => number | null, startAt: Instant, count: number): Float64Array {
  const value = new Float64Array(count).fill(Number.NaN)
  for (const hour of hours) {
    const index = (hour.at - startAt) / hourS - 1
    if (index >= 0 && index < count && Number.isInteger(index)) value[index] = of(hour) ?? Number.NaN
  }
  return value
}
