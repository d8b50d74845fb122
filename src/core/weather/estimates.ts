import type { LimitsSheet } from '../limits/sheet.js'
import { dewPointC, relativeHumidityPct } from '../physics/air.js'

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

/** Spread of the dew point before widening, from those of air and humidity to first order, slopes by central difference. */
export function dewSpreadK(airC: number | null, rhPct: number | null, spread: LimitsSheet['spread']): number {
  if (airC === null || rhPct === null) return spread.airK
  const low = rhPct * 0.99
  const high = Math.min(100, rhPct * 1.01)
  const perPct = (dewPointC(airC, high) - dewPointC(airC, low)) / (high - low)
  const perK = (dewPointC(airC + 0.1, rhPct) - dewPointC(airC - 0.1, rhPct)) / 0.2
  return Math.hypot(perK * spread.airK, perPct * spread.rhPct)
}
