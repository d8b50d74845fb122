import type { Instant } from '../instant.js'
import type { Trail } from './kit-model.js'

type Series = 'shellC' | 'meanC' | 'coreC' | 'heatJ'

/** A value of a trail at an instant, in a straight line between its steps; null outside them. */
export function valueAt(trail: Trail, series: Series, at: Instant): number | null {
  const values = trail[series]
  const last = trail.at.length - 1
  if (!(at >= (trail.at[0] ?? Number.POSITIVE_INFINITY) && at <= (trail.at[last] ?? Number.NEGATIVE_INFINITY))) return null
  let low = 0
  let high = last
  while (high - low > 1) {
    const middle = (low + high) >>> 1
    if ((trail.at[middle] ?? 0) <= at) low = middle
    else high = middle
  }
  const from = values[low] ?? null
  const to = values[high] ?? null
  const start = trail.at[low] ?? at
  if (from === null || to === null || high === low || start === at) return from
  return from + ((to - from) * (at - start)) / ((trail.at[high] ?? at) - start)
}

/** First whole second, from an instant on, at which the mean is as asked for; null when it never is, or is not known by then. */
export function first(trail: Trail, from: Instant, asked: (meanC: number) => boolean): Instant | null {
  const start = valueAt(trail, 'meanC', from)
  if (start === null) return null
  if (asked(start)) return from
  let before = from
  for (const [index, at] of trail.at.entries()) {
    if (at <= from) continue
    if (asked(trail.meanC[index] ?? Number.NaN)) return between(trail, before, at, asked)
    before = at
  }
  return null
}

/** Halves (no, yes] down to a second. */
function between(trail: Trail, no: Instant, yes: Instant, asked: (meanC: number) => boolean): Instant {
  let low = no
  let high = yes
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (asked(valueAt(trail, 'meanC', middle) ?? Number.NaN)) high = middle
    else low = middle
  }
  return Math.ceil(high)
}
