import { type Fact, isEstimate, missing } from '../fact.js'

/**
 * A function of two facts as a fact: its spread from theirs by central differences, taken as independent; it is an
 * estimate as soon as one of them is, and as old as the older. Null outside the range of the function: missing.
 */
export function combine(a: Fact, b: Fact, f: (a: number, b: number) => number | null): Fact {
  const value = a.value === null || b.value === null ? null : f(a.value, b.value)
  if (a.value === null || b.value === null || value === null) return { ...missing, stale: a.stale || b.stale }
  const av = a.value
  const bv = b.value
  const da = a.spread === 0 ? 0 : half(f(av + a.spread, bv), f(av - a.spread, bv))
  const db = b.spread === 0 ? 0 : half(f(av, bv + b.spread), f(av, bv - b.spread))
  const { origin, at, stale } = together(a, b)
  return { value, at, origin, spread: Math.hypot(da, db), stale }
}

/** Half the change over two spreads; outside the range of the function there is none to take. */
function half(above: number | null, below: number | null): number {
  return above === null || below === null ? 0 : (above - below) / 2
}

/** Origin, age and staleness of what follows from two facts. */
export function together(a: Fact<unknown>, b: Fact<unknown>): Pick<Fact, 'origin' | 'at' | 'stale'> {
  const origin = isEstimate(a) ? a.origin : b.origin
  const at = a.at === null || b.at === null ? (a.at ?? b.at) : Math.min(a.at, b.at)
  return { origin, at, stale: a.stale || b.stale }
}
