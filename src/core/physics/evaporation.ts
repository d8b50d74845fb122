import { standardPressureHpa } from './air.js'
import { above, within } from './range.js'
import { saturationWaterPa } from './saturation.js'

/** Latent heat of evaporation, MJ/kg, held constant. Source: FAO Irrigation and Drainage Paper 56 (Allen et al. 1998), annex 3. */
export const latentMjKg = 2.45

/**
 * A wet horizontal surface. Air −90…90 °C, humidity > 0…100 %, wind at 2 m over it 0…300 km/h, radiation kept −1000…1500
 * W/m², heat going into what is below −1000…1000 W/m².
 */
export interface EvaporationInput {
  readonly airC: number
  readonly rhPct: number
  readonly windKmh: number
  readonly netWm2: number
  readonly groundWm2: number
}

export interface PenmanTerms {
  /** Slope of the saturation curve, kPa/K. */
  readonly slopeKpaK: number
  /** Psychrometric constant, kPa/K. */
  readonly gammaKpaK: number
  /** Water that the energy at hand would evaporate, mm in the time. */
  readonly energyMm: number
  /** Drying power of the air, mm in the time. */
  readonly airMm: number
}

/** Slope of the saturation curve over water, kPa/K (−90…90 °C). Source: FAO-56 eq. 13. */
export function slopeKpaK(airC: number): number {
  within('airC', airC, -90, 90)
  return (4.098 * saturationWaterPa(airC)) / (airC + 237.3) ** 2
}

/** Psychrometric constant, kPa/K, at a pressure of 500…1100 hPa. Source: FAO-56 eq. 8. */
export function gammaKpaK(pressureHpa: number): number {
  within('pressureHpa', pressureHpa, 500, 1100)
  return 0.665e-4 * pressureHpa
}

/** Depth of water, mm/h, that a flow of heat (W/m²) evaporates. Source: FAO-56, table 3 (1 mm = 2.45 MJ/m²). */
export function depthMmPerHour(heatWm2: number): number {
  return (heatWm2 * 0.0036) / latentMjKg
}

/** The parts of the hourly Penman–Monteith equation. Source: FAO-56 eq. 53. */
export function penmanTerms(input: EvaporationInput, pressureHpa = standardPressureHpa): PenmanTerms {
  const { airC, rhPct, windKmh, netWm2, groundWm2 } = input
  above('rhPct', rhPct, 0, 100)
  within('windKmh', windKmh, 0, 300)
  within('netWm2', netWm2, -1000, 1500)
  within('groundWm2', groundWm2, -1000, 1000)
  const slope = slopeKpaK(airC)
  const deficitKpa = (saturationWaterPa(airC) * (100 - rhPct)) / 1e5
  return {
    slopeKpaK: slope,
    gammaKpaK: gammaKpaK(pressureHpa),
    energyMm: depthMmPerHour(netWm2 - groundWm2),
    airMm: ((37 / (airC + 273)) * windKmh * deficitKpa) / 3.6
  }
}

/** The two weighed, in the unit of `energyMm`. `resistance` is that of leaves over that of the air (0.34·u₂ for grass): a wet roof has none. */
export function combined({ slopeKpaK: slope, gammaKpaK: gamma, energyMm, airMm }: PenmanTerms, resistance = 0): number {
  return (slope * energyMm + gamma * airMm) / (slope + gamma * (1 + resistance))
}

/**
 * Water that leaves a wet surface, mm/h; negative: dew settles. Over water below 0 °C too, where ice gives off a little less.
 * Source: FAO-56 eq. 53 with no surface resistance (denominator Δ + γ). RangeError outside `EvaporationInput`.
 */
export function evaporationMmPerHour(input: EvaporationInput, pressureHpa = standardPressureHpa): number {
  return combined(penmanTerms(input, pressureHpa))
}

/** Minutes until a film (0…100 mm) has gone at a rate (−100…100 mm/h); 0 without a film, null where it never goes. */
export function dryingMin(filmMm: number, mmPerHour: number): number | null {
  within('filmMm', filmMm, 0, 100)
  within('mmPerHour', mmPerHour, -100, 100)
  if (filmMm === 0) return 0
  const minutes = (60 * filmMm) / mmPerHour
  return mmPerHour > 0 && Number.isFinite(minutes) ? minutes : null
}
