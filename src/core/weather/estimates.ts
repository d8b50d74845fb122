import type { LimitsSheet } from '../limits/sheet.js'
import { dewPointC, relativeHumidityPct } from '../physics/air.js'
import { saturationWaterPerK } from '../physics/saturation.js'

/** Gust over the 10 min mean wind where a source gives none. Source: from memory. */
const gustFactor = 1.6

/** The gust of the hour, never below the mean wind; 1.6 × the mean wind where there is none. */
export function gustOver(gustKmh: number | null, windKmh: number | null): number | null {
  if (gustKmh === null) return windKmh === null ? null : gustFactor * windKmh
  return windKmh === null ? gustKmh : Math.max(gustKmh, windKmh)
}

export interface HumidAir {
  readonly airC: number | null
  readonly rhPct: number | null
  readonly dewC: number | null
}

/** Fills in the one of humidity and dew point that is missing; a dew point never lies above the air. */
export function humidAir(airC: number | null, rhPct: number | null, dewC: number | null): HumidAir {
  if (airC === null) return { airC, rhPct, dewC }
  if (dewC !== null) return { airC, rhPct: rhPct ?? relativeHumidityPct(airC, Math.min(dewC, airC)), dewC: Math.min(dewC, airC) }
  return { airC, rhPct, dewC: rhPct === null ? null : dewPointC(airC, rhPct) }
}

/** Spread of the dew point, from those of air and humidity to first order: vapour has one pressure at both ends, so that slopes divide. */
export function dewSpreadK({ airC, rhPct, dewC }: HumidAir, spread: LimitsSheet['spread']): number {
  if (airC === null || rhPct === null || dewC === null) return spread.airK
  const atDew = saturationWaterPerK(Math.max(-110, dewC))
  return Math.hypot((saturationWaterPerK(airC) / atDew) * spread.airK, spread.rhPct / (rhPct * atDew))
}
