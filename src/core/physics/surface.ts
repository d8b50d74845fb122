import { convectionWm2K } from './convection.js'
import { within } from './range.js'
import { blackBodyWm2, skyLongWaveWm2 } from './sky.js'

/**
 * A dry horizontal surface under the open sky. Air −90…90 °C, dew point up to the air's, wind over the roof 0…300 km/h,
 * sun on the horizontal 0…1500 W/m², cloud 0…100 %, absorptance (of sun) and emissivity (long-wave) 0…1.
 */
export interface SurfaceInput {
  readonly airC: number
  readonly dewPointC: number
  readonly windKmh: number
  readonly sunWm2: number
  readonly cloudPct: number
  readonly absorptance: number
  readonly emissivity: number
}

/** What the weather gives a surface, apart from the surface's own temperature. */
interface Gains {
  readonly airC: number
  readonly gainWm2: number
  readonly emissivity: number
  readonly hWm2K: number
}

function gains({ airC, dewPointC, windKmh, sunWm2, cloudPct, absorptance, emissivity }: SurfaceInput): Gains {
  within('sunWm2', sunWm2, 0, 1500)
  within('absorptance', absorptance, 0, 1)
  within('emissivity', emissivity, 0, 1)
  const gainWm2 = absorptance * sunWm2 + emissivity * skyLongWaveWm2(airC, dewPointC, cloudPct)
  return { airC, gainWm2, emissivity, hWm2K: convectionWm2K(windKmh) }
}

/** Radiation that a surface of `surfaceC` (−110…400 °C) keeps, W/m²: sun absorbed + long-wave from the sky − its own. */
export function netRadiationWm2(surfaceC: number, input: SurfaceInput): number {
  within('surfaceC', surfaceC, -110, 400)
  const { gainWm2, emissivity } = gains(input)
  return gainWm2 - emissivity * blackBodyWm2(surfaceC + 273.15)
}

/**
 * Temperature, °C, that a surface settles at with no heat from below and no water on it: sun absorbed + sky long-wave =
 * own long-wave + convection. RangeError outside the ranges of `SurfaceInput`.
 * Source: outside surface heat balance as in the EnergyPlus Engineering Reference; sky and convection as named there.
 */
export function surfaceC(input: SurfaceInput): number {
  const { airC, gainWm2, emissivity, hWm2K } = gains(input)
  const airK = airC + 273.15
  // The sky is never warmer than the air: at this start the balance is never positive, and from there Newton falls
  // onto the root without passing it, as the balance bends one way only. Six steps reach the last digits.
  let t = airK + (input.absorptance * input.sunWm2) / hWm2K
  for (let step = 0; step < 40; step += 1) {
    const sentWm2 = emissivity * blackBodyWm2(t)
    const balance = gainWm2 - sentWm2 + hWm2K * (airK - t)
    const moveK = balance / ((4 * sentWm2) / t + hWm2K)
    t += moveK
    if (!(Math.abs(moveK) > 1e-11)) break
  }
  return t - 273.15
}
