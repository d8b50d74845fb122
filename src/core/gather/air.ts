import { type Fact, missing } from '../fact.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { dewPointC, relativeHumidityPct } from '../physics/air.js'
import { heatIndexC } from '../physics/heat-index.js'
import { saturatedIceC, saturationWaterPa } from '../physics/saturation.js'
import { windChillC } from '../physics/wind-chill.js'
import type { WeatherAt } from '../weather/at.js'
import { combine } from './combine.js'
import { inForce } from './in-force.js'
import type { Said } from './memory.js'

export interface AirFacts {
  readonly airC: Fact
  readonly rhPct: Fact
  readonly dewPointC: Fact
  readonly windKmh: Fact
  readonly gustKmh: Fact
  readonly cloudPct: Fact
  readonly heatIndexC: Fact
  readonly feltC: Fact
}

/** The air and the wind: readings in force before the forecast, humidity and dew point from each other. */
export function gatherAir(said: Said, weather: WeatherAt, sheet: LimitsSheet, now: Instant): AirFacts {
  const age = sheet.maxAgeMin
  const airC = inForce(said.airC, age.air, now, 'reading', weather.airC)
  const saidRh = inForce(said.rhPct, age.rh, now, 'reading', missing)
  const saidDew = inForce(said.dewPointC, age.dew, now, 'reading', missing)
  const { rhPct, dewPointC: dewC } = humidity(airC, saidRh, saidDew, weather)
  const windKmh = inForce(said.windKmh, age.wind, now, 'reading', weather.windKmh)
  return {
    airC,
    rhPct,
    dewPointC: dewC,
    windKmh,
    gustKmh: inForce(said.gustKmh, age.gust, now, 'reading', weather.gustKmh),
    cloudPct: weather.cloudPct,
    heatIndexC: combine(airC, rhPct, (air, rh) => heatIndexC(degrees(air), percent(rh))),
    feltC: felt(airC, windKmh)
  }
}

/** The later of a stated humidity and a stated dew point leads; the other follows from it and the air. */
function humidity(airC: Fact, saidRh: Fact, saidDew: Fact, weather: WeatherAt): Pick<AirFacts, 'rhPct' | 'dewPointC'> {
  const dewLeads = saidDew.value !== null && (saidRh.value === null || (saidDew.at ?? 0) >= (saidRh.at ?? 0))
  if (dewLeads) {
    const derived = combine(airC, saidDew, (air, dew) => relativeHumidityPct(degrees(air), Math.max(-110, Math.min(dew, degrees(air)))))
    return { dewPointC: saidDew, rhPct: saidRh.value === null ? derived : saidRh }
  }
  if (saidRh.value !== null) return { rhPct: saidRh, dewPointC: combine(airC, saidRh, (air, rh) => dewPointC(degrees(air), percent(rh))) }
  const stale = saidRh.stale || saidDew.stale
  const old: Fact = stale ? { ...missing, stale, origin: 'reading', at: saidRh.at ?? saidDew.at } : missing
  const rhPct = weather.rhPct.value === null && stale ? old : weather.rhPct
  if (airC.origin === 'forecast' && weather.dewPointC.value !== null) return { rhPct, dewPointC: weather.dewPointC }
  return { rhPct, dewPointC: combine(airC, rhPct, (air, rh) => dewPointC(degrees(air), percent(rh))) }
}

/** Wind chill, or the air where wind chill is not defined; above 10 °C it takes no wind to know that. */
function felt(airC: Fact, windKmh: Fact): Fact {
  if (airC.value !== null && airC.value > 10 + 2 * airC.spread) return airC
  return combine(airC, windKmh, (air, wind) => windChillC(air, Math.max(0, wind)) ?? air)
}

/**
 * Where water comes out on a surface: the dew point, or the frost point where the dew point is below 0 °C. Very dry and very cold air
 * has a dew point below −110 °C, where the formula ends: no roof is ever as cold, so it is taken as that.
 */
export function condensation(dewC: number): number {
  return dewC >= 0 ? dewC : saturatedIceC(saturationWaterPa(Math.max(-110, dewC)))
}

/** Keeps an air temperature moved by its spread inside what the formulas take. */
function degrees(airC: number): number {
  return Math.min(90, Math.max(-90, airC))
}

/** Keeps a humidity moved by its spread inside what the formulas take. */
function percent(rhPct: number): number {
  return Math.min(100, Math.max(0.1, rhPct))
}
