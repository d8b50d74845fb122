export interface VoidRate {
  readonly per100m: number | null
  /** The rate that is exceeded with 10 % probability at most. */
  readonly per100mUpper90: number | null
}

/**
 * Voids per 100 m welded, with the exact one-sided 90 % upper bound of a Poisson count (Garwood 1936: half the 90 %
 * point of χ² with 2·(voids + 1) degrees of freedom). Whole voids 0…100,000, metres > 0…1e9; both null outside.
 */
export function voidRate(voids: number, metres: number): VoidRate {
  if (!(Number.isInteger(voids) && voids >= 0 && voids <= 100_000 && metres > 0 && metres <= 1e9)) {
    return { per100m: null, per100mUpper90: null }
  }
  return { per100m: (voids / metres) * 100, per100mUpper90: (upperMean(voids) / metres) * 100 }
}

/** The 90 % point of the normal distribution, where the bound of many events begins. */
const z90 = 1.2815515655446004
const mostSteps = 30

/** The mean at which `count` events or fewer have a chance of 10 %: Newton's steps from the Wilson–Hilferty approximation. */
function upperMean(count: number): number {
  const k = count + 1
  const logFactorial = logFactorialOf(count)
  let mean = k * (1 - 1 / (9 * k) + z90 / (3 * Math.sqrt(k))) ** 3
  for (let step = 0; step < mostSteps; step += 1) {
    const { atMost, exactly } = chances(count, mean, logFactorial)
    const change = (atMost - 0.1) / exactly
    mean += change
    if (Math.abs(change) <= 1e-13 * mean) break
  }
  return mean
}

/** P(X ≤ count) and P(X = count) for a mean above `count`: summed downward from the largest term, until what is left is too small to count. */
function chances(count: number, mean: number, logFactorial: number): { readonly atMost: number; readonly exactly: number } {
  const exactly = Math.exp(count * Math.log(mean) - mean - logFactorial)
  let term = 1
  let sum = 1
  for (let k = count; k > 0 && term > 1e-17 * sum; k -= 1) {
    term *= k / mean
    sum += term
  }
  return { atMost: exactly * sum, exactly }
}

/** Stirling's series from 50 on (Abramowitz & Stegun 6.1.41), wrong by less than 1e-15 there; a product below. */
function logFactorialOf(n: number): number {
  if (n >= 50) return n * Math.log(n) - n + Math.log(2 * Math.PI * n) / 2 + 1 / (12 * n) - 1 / (360 * n ** 3) + 1 / (1260 * n ** 5)
  let log = 0
  for (let k = 2; k <= n; k += 1) log += Math.log(k)
  return log
}
