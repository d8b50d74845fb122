import type { Instant } from '../instant.js'
import { within } from './range.js'
import { sunPosition } from './sun.js'

/** Sun outside the atmosphere at the mean distance, W/m². As Liljegren et al. 2008 use it. */
export const solarConstantWm2 = 1367

/** Below this cosine of the zenith angle (sun under 0.5°) there is no beam to speak of. Source: Liljegren et al. 2008. */
export const lowestBeamCos = 0.00873

/** Cosine of the zenith angle, −1…1, from the height of the sun (−90…90°). */
export function cosZenith(elevationDeg: number): number {
  within('elevationDeg', elevationDeg, -90, 90)
  return Math.sin((elevationDeg * Math.PI) / 180)
}

/**
 * Sun on the horizontal, W/m², from its height (−90…90°) and cloud (0…100 %): (910·sin h − 30)·(1 − 0.75·n^3.4), 0 where
 * that is negative. Hamburg, all cloud alike: thin high cloud lets more through. Source: Kasten & Czeplak 1980, Solar
 * Energy 24:177–189; the clear-sky coefficients from memory.
 */
export function horizontalWm2(elevationDeg: number, cloudPct: number): number {
  within('cloudPct', cloudPct, 0, 100)
  const clearWm2 = Math.max(0, 910 * cosZenith(elevationDeg) - 30)
  return clearWm2 * (1 - 0.75 * (cloudPct / 100) ** 3.4)
}

/** The same for a place and an instant; ranges as `sunPosition`. */
export function sunAtWm2(lat: number, lon: number, at: Instant, cloudPct: number): number {
  return horizontalWm2(sunPosition(lat, lon, at).elevationDeg, cloudPct)
}

/**
 * Share of the horizontal sun (0…1500 W/m²) that comes straight from it, 0…0.9, by how much of the sun outside the atmosphere
 * arrives: exp(3 − 1.34·S* − 1.65/S*). 0 with the sun below 0.5°. `cos` is that of the zenith angle, −1…1. An hourly mean may be
 * more than the sun at the end of the hour could give: then the share is of what it can (S* ≤ 0.85).
 * Source: Liljegren et al. 2008, J. Occup. Environ. Hyg. 5:645–655, eqs. 13 and 14, mean distance of the sun.
 */
export function directFraction(sunWm2: number, cos: number): number {
  within('sunWm2', sunWm2, 0, 1500)
  within('cosZenith', cos, -1, 1)
  if (sunWm2 === 0 || cos < lowestBeamCos) return 0
  const mostWm2 = 0.85 * solarConstantWm2 * cos
  const share = Math.min(sunWm2, mostWm2) / (solarConstantWm2 * cos)
  const direct = Math.min(0.9, Math.exp(3 - 1.34 * share - 1.65 / share))
  return direct * Math.min(1, mostWm2 / sunWm2)
}
