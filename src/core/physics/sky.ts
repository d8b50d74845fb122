import { OutOfRange, within } from './range.js'

/** Stefan–Boltzmann constant, W/(m²·K⁴). Source: CODATA 2018. */
export const stefanBoltzmann = 5.670374419e-8

/** What a black body sends out, W/m². By squares: as a power it takes ten times as long, and a plan asks ten thousand times. */
export function blackBodyWm2(tK: number): number {
  const square = tK * tK
  return stefanBoltzmann * square * square
}

/** The parabola in the dew point falls down to here, °C, and would rise again in drier air, which no sky does. */
const driestC = (-100 * 0.56) / (2 * 0.73)

export interface SkyState {
  /** Of the whole sky as seen by a horizontal surface, 0…1. */
  readonly emissivity: number
  /** Temperature of a black sky that sends down the same. */
  readonly skyC: number
}

/**
 * Emissivity of a clear sky, 0…1, from the dew point near the ground (−110…90 °C; fitted to −20…30 °C, below −38 °C held).
 * Source: Berdahl & Martin 1984, Solar Energy 32:663–664, coefficients from memory: 0.711 + 0.56·(d/100) + 0.73·(d/100)².
 */
export function clearSkyEmissivity(dewPointC: number): number {
  within('dewPointC', dewPointC, -110, 90)
  const d = Math.max(driestC, dewPointC) / 100
  return Math.min(1, 0.711 + 0.56 * d + 0.73 * d ** 2)
}

/**
 * How much more the sky sends down under cloud (0…100 %): 1…1.154, cloud counted in tenths.
 * Source: Clark & Allen 1978 and Walton 1983 as in the EnergyPlus Engineering Reference, "Climate Calculations".
 */
export function cloudFactor(cloudPct: number): number {
  within('cloudPct', cloudPct, 0, 100)
  const n = cloudPct / 10
  return 1 + n * (0.0224 + n * (-0.0035 + n * 0.00028))
}

/** Sky from air (−90…90 °C), dew point (up to the air's) and cloud (0…100 %); never warmer than the air. */
export function sky(airC: number, dewPointC: number, cloudPct: number): SkyState {
  const emissivity = skyEmissivity(airC, dewPointC, cloudPct)
  return { emissivity, skyC: Math.min(airC, emissivity ** 0.25 * (airC + 273.15) - 273.15) }
}

function skyEmissivity(airC: number, dewPointC: number, cloudPct: number): number {
  within('airC', airC, -90, 90)
  if (dewPointC > airC) throw new OutOfRange('dewPointC', `dewPointC ${dewPointC} is above airC ${airC}`)
  return Math.min(1, clearSkyEmissivity(dewPointC) * cloudFactor(cloudPct))
}

/** Long-wave radiation that the sky sends onto a horizontal surface, W/m²; ranges as `sky`. */
export function skyLongWaveWm2(airC: number, dewPointC: number, cloudPct: number): number {
  return skyEmissivity(airC, dewPointC, cloudPct) * blackBodyWm2(airC + 273.15)
}
