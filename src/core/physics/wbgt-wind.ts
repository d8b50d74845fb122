import { within } from './range.js'

/** Wind at 2 m over that at 10 m by stability class A…F: a fifth to the power of the wind profile's exponent in built-up land. */
const shares = { A: 0.2 ** 0.15, B: 0.2 ** 0.15, C: 0.2 ** 0.2, D: 0.2 ** 0.25, E: 0.2 ** 0.3, F: 0.2 ** 0.3 } as const
type Stability = keyof typeof shares

/** Rows by wind (from m/s), columns by sun (from 925, 675, 175, 0 W/m²). */
const byDay: readonly (readonly [number, readonly [Stability, Stability, Stability, Stability]])[] = [
  [6, ['C', 'D', 'D', 'D']],
  [5, ['C', 'C', 'D', 'D']],
  [3, ['B', 'B', 'C', 'D']],
  [2, ['A', 'B', 'C', 'D']],
  [0, ['A', 'A', 'B', 'D']]
]
/** Least wind at 10 m that the model is run with, m/s: people and the sun stir the air. */
const leastMs = 0.62

function stability(windMs: number, sunWm2: number, day: boolean): Stability {
  if (!day) return windMs < 2 ? 'E' : 'D'
  const column = sunWm2 >= 925 ? 0 : sunWm2 >= 675 ? 1 : sunWm2 >= 175 ? 2 : 3
  const row = byDay.find(([fromMs]) => windMs >= fromMs)
  return row?.[1][column] ?? 'D'
}

/**
 * Wind at 2 m, km/h, from wind at 10 m (0…300 km/h, at least 2.2), sun (0…1500 W/m²) and the cosine of the zenith angle (−1…1):
 * a power law by stability class, for built-up land. Source: Liljegren et al. 2008 (US EPA solar radiation / delta-T method); least
 * wind as in the tests of github.com/ecmwf/thermofeel.
 */
export function windAt2mKmh(windKmh: number, sunWm2: number, cosZenith: number): number {
  within('windKmh', windKmh, 0, 300)
  within('sunWm2', sunWm2, 0, 1500)
  within('cosZenith', cosZenith, -1, 1)
  const windMs = Math.max(leastMs, windKmh / 3.6)
  return 3.6 * windMs * shares[stability(windMs, sunWm2, cosZenith > 0)]
}
