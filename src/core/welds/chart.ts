export interface IndividualsChart {
  /** Null without a width. */
  readonly meanMm: number | null
  /** Null for fewer than two widths, and with it the control limits. */
  readonly sigmaMm: number | null
  readonly lowMm: number | null
  readonly highMm: number | null
}

/**
 * Individuals chart of coupon widths in their order: sigma = mean moving range ÷ 1.128, limits mean ± 3 sigma.
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2. Widths that are not numbers make it all null.
 */
export function individualsChart(widthsMm: readonly number[]): IndividualsChart {
  if (widthsMm.length === 0 || !widthsMm.every(Number.isFinite)) return { meanMm: null, sigmaMm: null, lowMm: null, highMm: null }
  let sum = 0
  let ranges = 0
  widthsMm.forEach((width, index) => {
    sum += width
    ranges += Math.abs(width - (widthsMm[index - 1] ?? width))
  })
  const meanMm = sum / widthsMm.length
  if (widthsMm.length < 2) return { meanMm, sigmaMm: null, lowMm: null, highMm: null }
  const sigmaMm = ranges / (widthsMm.length - 1) / 1.128
  return { meanMm, sigmaMm, lowMm: meanMm - 3 * sigmaMm, highMm: meanMm + 3 * sigmaMm }
}

/** With fewer coupons than this the chance of a short one is a number that nobody should act on. Common practice, no source. */
export const chanceFrom = 5

/** Chance, 0…1, that the next width is below `minMm`, widths being normal; null while mean or sigma is not known. */
export function chanceShort(meanMm: number | null, sigmaMm: number | null, minMm: number): number | null {
  if (meanMm === null || sigmaMm === null || !(sigmaMm >= 0) || !Number.isFinite(meanMm) || !Number.isFinite(minMm)) return null
  if (sigmaMm === 0) return meanMm < minMm ? 1 : 0
  return normalBelow((minMm - meanMm) / sigmaMm)
}

/** Normal distribution function by its power series (Marsaglia 2004, J. Stat. Softw. 11(4)); beyond 8 sigma 0 or 1, wrong by less than 1e-15. */
function normalBelow(z: number): number {
  if (z < -8) return 0
  if (z > 8) return 1
  let term = z
  let sum = z
  for (let n = 3; n < 400; n += 2) {
    term *= z ** 2 / n
    sum += term
  }
  return Math.min(1, Math.max(0, 0.5 + (sum * Math.exp(-(z ** 2) / 2)) / Math.sqrt(2 * Math.PI)))
}
