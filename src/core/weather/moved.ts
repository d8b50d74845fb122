import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { dewPointC } from '../physics/air.js'
import { gustOver, type HumidAir, humidAir } from './estimates.js'
import { added, type Local, readingSpread, spreadNear } from './local.js'

type Spread = LimitsSheet['spread']

/** Air and wind of an instant, and one standard deviation of each there. */
export interface Plain {
  readonly air: HumidAir
  readonly windKmh: number | null
  readonly gustKmh: number | null
  /** The source has no gust: it follows from the mean wind. */
  readonly gustEstimated: boolean
  readonly spread: Spread
}

/** Spreads at an instant ahead: each by the same factor. */
export function widened({ airK, rhPct, windKmh, gustKmh, gustEstimatedKmh }: Spread, factor: number): Spread {
  return {
    airK: airK * factor,
    rhPct: rhPct * factor,
    windKmh: windKmh * factor,
    gustKmh: gustKmh * factor,
    gustEstimatedKmh: gustEstimatedKmh * factor
  }
}

/**
 * What a forecast says of an instant, moved by what readings on the roof were off from it. Humidity leads the dew point, as in the
 * model of the roof. A gust that nobody read is raised with the mean wind and never lowered: a roof in the lee has its gusts all the same.
 */
export function moved(plain: Plain, local: Local, at: Instant): Plain {
  const { air, windKmh, spread } = plain
  const wind = windKmh === null ? null : Math.max(0, windKmh + added(local.windKmh, at))
  return {
    air: movedAir(air, local, at),
    windKmh: wind,
    gustKmh: movedGust(plain, wind, local, at),
    gustEstimated: plain.gustEstimated,
    spread: {
      airK: spreadNear(spread.airK, local.airC, readingSpread.airK, at),
      rhPct: spreadNear(spread.rhPct, local.rhPct, readingSpread.rhPct, at),
      windKmh: spreadNear(spread.windKmh, local.windKmh, readingSpread.windKmh, at),
      gustKmh: spreadNear(spread.gustKmh, local.gustKmh, readingSpread.gustKmh, at),
      gustEstimatedKmh: spreadNear(spread.gustEstimatedKmh, local.gustKmh, readingSpread.gustKmh, at)
    }
  }
}

function movedAir(air: HumidAir, { airC, rhPct }: Local, at: Instant): HumidAir {
  if (airC === null && rhPct === null) return air
  const c = air.airC === null ? null : Math.min(60, Math.max(-89, air.airC + added(airC, at)))
  const pct = air.rhPct === null ? null : Math.min(100, Math.max(1, air.rhPct + added(rhPct, at)))
  return humidAir(c, pct, c === null || pct === null ? air.dewC : dewPointC(c, pct))
}

function movedGust({ gustKmh, gustEstimated }: Plain, windKmh: number | null, local: Local, at: Instant): number | null {
  if (gustKmh === null) return null
  if (local.gustKmh !== null) return gustOver(Math.max(0, gustKmh + added(local.gustKmh, at)), windKmh)
  return gustEstimated ? gustOver(null, windKmh) : gustOver(gustKmh + Math.max(0, added(local.windKmh, at)), windKmh)
}
