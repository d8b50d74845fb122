import type { Outcome } from '../outcome.js'

/** One-sided 95 % of a normal distribution: how clear of a limit an estimate must be. */
const clear = 1.645

/**
 * How an estimate with a standard deviation `spread` is judged: at value − 1.645 s, at value + 1.645 s and at every
 * bound between. All alike → that; go and caution → caution; no-go mixed with anything, or anything unknown → unknown.
 * A spread that is no number reaches everywhere.
 */
export function interval(value: number, spread: number, between: readonly (number | null)[], at: (point: number) => Outcome): Outcome {
  const reach = reachOf(spread)
  const low = value - reach
  const high = value + reach
  let mixed = mix(at(low), at(high))
  for (const bound of between) if (bound !== null && bound > low && bound < high) mixed = mix(mixed, at(bound))
  return mixed
}

/** How far either way of an estimate is looked. */
export function reachOf(spread: number): number {
  return spread >= 0 ? clear * spread : Number.POSITIVE_INFINITY
}

/** One outcome for two points that a value may be at. */
export function mix(a: Outcome, b: Outcome): Outcome {
  if (a === b) return a
  if (a === 'go') return b === 'caution' ? 'caution' : 'unknown'
  if (b === 'go') return a === 'caution' ? 'caution' : 'unknown'
  return 'unknown'
}
