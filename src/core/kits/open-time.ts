export interface OpenTimePoint {
  /** Substrate temperature, °C. */
  readonly c: number
  /** Open time there, s. */
  readonly s: number
}

/** 90 s cold … 30 s hot: common practice; the temperatures are invented. */
export const commonOpenTime: readonly OpenTimePoint[] = [
  { c: 10, s: 90 },
  { c: 35, s: 30 }
]

const kelvin = 273.15

/**
 * Open time of the foam, s, on a substrate of −20…80 °C: a thin film takes its temperature in seconds, so Arrhenius (ln t
 * linear in 1/T) through the points of the limits sheet, between neighbours when there are more than two, continued
 * beyond the ends. Null outside the range, or without two points at different temperatures and times > 0.
 */
export function openTimeS(substrateC: number, points: readonly OpenTimePoint[]): number | null {
  if (!(substrateC >= -20 && substrateC <= 80)) return null
  if (!points.every((point) => point.c > -kelvin && point.c < 1000 && point.s > 0 && point.s < Infinity)) return null
  const sorted = [...points].sort((a, b) => a.c - b.c)
  const at = sorted.findIndex((point, index) => index > 0 && substrateC <= point.c)
  const upper = sorted[at === -1 ? sorted.length - 1 : at]
  const lower = sorted[at === -1 ? sorted.length - 2 : at - 1]
  if (!upper || !lower || upper.c === lower.c) return null
  const share = (inverse(substrateC) - inverse(lower.c)) / (inverse(upper.c) - inverse(lower.c))
  return Math.exp(Math.log(lower.s) + share * Math.log(upper.s / lower.s))
}

function inverse(c: number): number {
  return 1 / (c + kelvin)
}
