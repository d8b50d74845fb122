import type { Outcome } from '../outcome.js'

/** One-sided 95 % of a normal distribution: how clear of a limit an estimate must be. */
const clear = 1.645

/**
 * How an estimate with a standard deviation `spread` is judged: at value − 1.645 s, at value + 1.645 s and at every
 * bound between. All alike → that; go and caution → caution; no-go mixed with anything, or anything unknown → unknown.
 * A spread that is no number reaches everywhere.
 */
export function interval(value: number, spread: number, between: readonly (number | null)[], at: (point: number) => Outcome): Outcome {
  const reach = spread >= 0 ? clear * spread : Number.POSITIVE_INFINITY
  const low = value - reach
  const high = value + reach
  let mixed = mix(at(low), at(high))
  for (const bound of between) if (bound !== null && bound > low && bound < high) mixed = mix(mixed, at(bound))
  return mixed
}

function mix(a: Outcome, b: Outcome): Outcome {
  if (a === b) return a
  if (a === 'go') return b === 'caution' ? 'caution' : 'unknown'
  if (b === 'go') return a === 'caution' ? 'caution' : 'unknown'
  return 'unknown'
}
