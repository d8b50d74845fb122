import type { Noted } from './noted.js'

/**
 * How far a reading went, up and down, since any instant: of all readings only those are kept that no later one exceeds. Highs fall,
 * lows rise, both in order of `at`.
 */
export interface Extremes {
  readonly highs: readonly Noted<number>[]
  readonly lows: readonly Noted<number>[]
}

/** Adds a reading that is not earlier than those before it. */
export function markExtremes(before: Extremes | undefined, reading: Noted<number>): Extremes {
  const { highs, lows } = before ?? { highs: [], lows: [] }
  return {
    highs: [...highs.filter(({ value }) => value > reading.value), reading],
    lows: [...lows.filter(({ value }) => value < reading.value), reading]
  }
}

/** The largest distance of any reading after an entry from a value; null when there was none. */
export function farthestFrom(value: number, extremes: Extremes | undefined, { at, seq }: Pick<Noted<unknown>, 'at' | 'seq'>): number | null {
  const since = (one: Noted<number>) => one.at > at || (one.at === at && one.seq > seq)
  const ends = [extremes?.highs.find(since), extremes?.lows.find(since)].flatMap((end) => end ?? [])
  return ends.length === 0 ? null : Math.max(...ends.map((end) => Math.abs(end.value - value)))
}
