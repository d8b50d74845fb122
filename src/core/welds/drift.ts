import { individualsChart } from './chart.js'

export interface Drift {
  /** Each coupon narrower than the one before, or more of them low than chance allows. */
  readonly kind: 'falling' | 'low'
  /** Coupons until a straight line through the last ones is below the minimum, 1 … `farthest`; null: farther, or not falling. */
  readonly shortIn: number | null
}

/** So many in a row, each narrower than the one before, come by chance once in 120. */
const inARow = 5
const farthest = 10
/** Fewer tell no mean and no sigma worth comparing with. */
const forLow = 8

/**
 * Do the widths (mm, oldest first) go down, so that a coupon will fail before one has? Falling: the last five each narrower than
 * the one before. Low: one of the Western Electric rules on the lower side of the individuals chart (2 of the last 3 below 2 sigma,
 * 4 of the last 5 below 1 sigma, 8 in a row below the mean): NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2, from memory.
 * The five in a row: common practice, no source. Null for neither, and for widths that are not numbers.
 */
export function driftOf(widthsMm: readonly number[], minMm: number): Drift | null {
  if (!widthsMm.every(Number.isFinite)) return null
  if (isFalling(widthsMm.slice(-inARow))) return { kind: 'falling', shortIn: shortIn(widthsMm.slice(-inARow), minMm) }
  return isLow(widthsMm) ? { kind: 'low', shortIn: null } : null
}

function isFalling(last: readonly number[]): boolean {
  return last.length === inARow && last.every((width, index) => index === 0 || width < (last[index - 1] as number))
}

function isLow(widthsMm: readonly number[]): boolean {
  const { meanMm, sigmaMm } = individualsChart(widthsMm)
  if (widthsMm.length < forLow || meanMm === null || sigmaMm === null || !(sigmaMm > 0)) return false
  const below = (last: number, sigmas: number) => widthsMm.slice(-last).filter((width) => width < meanMm - sigmas * sigmaMm).length
  return below(3, 2) >= 2 || below(5, 1) >= 4 || below(8, 0) === 8
}

/** Least squares through the widths, one coupon apart. */
function shortIn(widthsMm: readonly number[], minMm: number): number | null {
  const middle = (widthsMm.length - 1) / 2
  let slope = 0
  let weight = 0
  let sum = 0
  widthsMm.forEach((width, index) => {
    slope += (index - middle) * width
    weight += (index - middle) ** 2
    sum += width
  })
  const mean = sum / widthsMm.length
  for (let ahead = 1; ahead <= farthest; ahead += 1) {
    if (mean + (slope / weight) * (middle + ahead) < minMm) return ahead
  }
  return null
}
