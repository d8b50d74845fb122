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

/** The mean at which `count` events or fewer have a chance of 10 %. */
function upperMean(count: number): number {
  let logFactorial = 0
  for (let k = 2; k <= count; k += 1) logFactorial += Math.log(k)
  let low = count
  let high = count + 5 + 4 * Math.sqrt(count + 1)
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2
    if (chanceAtMost(count, middle, logFactorial) > 0.1) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** P(X ≤ count) for a mean above `count`: summed downward from the largest term, until what is left is too small to count. */
function chanceAtMost(count: number, mean: number, logFactorial: number): number {
  const largest = Math.exp(count * Math.log(mean) - mean - logFactorial)
  let term = 1
  let sum = 1
  for (let k = count; k > 0 && term > 1e-17 * sum; k -= 1) {
    term *= k / mean
    sum += term
  }
  return largest * sum
}
