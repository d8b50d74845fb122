import { type Fact, isEstimate, missing, rounded } from '../fact.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { standardPressureHpa } from '../physics/air.js'
import { cosZenith, directFraction, horizontalWm2 } from '../physics/radiation.js'
import { sunPosition } from '../physics/sun.js'
import { isWbgtAtMost, type WbgtInput, wbgt } from '../physics/wbgt.js'
import { alertC, asksForWbgt } from '../rules/heat.js'
import { reachOf } from '../rules/interval.js'
import type { WeatherAt } from '../weather/at.js'
import type { AirFacts } from './air.js'
import { inForce } from './in-force.js'
import type { Memory, Said } from './memory.js'

/** Sun reckoned from cloud is off by this share. Source: from memory. */
const sunSpreadShare = 0.25
/**
 * By how much WBGT moves per K of air (at the same humidity), % of humidity, km/h of wind and W/m² of sun, in warm weather: what
 * `wbgt` itself gives by differences between 18 and 38 °C, about. Reckoning them each time would cost five times as much.
 */
const moves = { perK: 0.87, perPct: 0.15, perKmh: 0.15, perWm2: 0.006 } as const
/** In a plan nobody reads it where it stays below the alert limit (23 °C for heavy work): air this cool is passed over. From memory. */
const warmC = 15
/** More than what rounding to 6 decimals adds to a value and to its spread, K. */
const roundingK = 1e-5

/**
 * Outdoor WBGT, where air, humidity, wind and sun are known: sun as read, else as the source has it, else from its height and cloud.
 * In air below 0 °C it has no meaning: missing; so it is in a plan where it is below the alert limit beyond doubt, or heat stops people
 * anyway, as nothing is made of it there.
 */
export function gatherWbgt(
  { settings }: Memory,
  said: Said,
  air: AirFacts,
  weather: WeatherAt,
  sheet: LimitsSheet,
  now: Instant,
  knownAt: Instant
): Fact {
  const { airC, rhPct, windKmh } = air
  if (airC.value === null || rhPct.value === null || windKmh.value === null || airC.value < 0 || airC.value > 60) return missing
  if (now !== knownAt && (airC.value < warmC || !asksForWbgt(rounded(air.heatIndexC), sheet))) return missing
  const cos = cosZenith(sunPosition(settings.lat, settings.lon, now).elevationDeg)
  const sun = inForce(said.sunWm2, sheet.maxAgeMin.sun, now, 'reading', estimated(weather, air, cos, now))
  if (sun.value === null) return missing
  const kmh = windKmh.value
  const pressureHpa = weather.pressureHpa.value ?? standardPressureHpa
  const sunWm2 = Math.min(1500, Math.max(0, sun.value))
  const input: WbgtInput = {
    airC: airC.value,
    rhPct: Math.min(100, Math.max(0.1, rhPct.value)),
    pressureHpa,
    windKmh: Math.min(300, Math.max(0, kmh)),
    sunWm2,
    directFraction: directFraction(sunWm2, cos),
    cosZenith: cos
  }
  const parts = [airC, rhPct, windKmh, sun]
  const estimate = parts.find(isEstimate)
  if (estimate === undefined) {
    return { value: wbgt(input).wbgtC, at: Math.min(...parts.map(({ at }) => at ?? now)), origin: 'reading', spread: 0, stale: false }
  }
  const spread = Math.hypot(moves.perK * airC.spread, moves.perPct * rhPct.spread, moves.perKmh * windKmh.spread, moves.perWm2 * sun.spread)
  if (now !== knownAt && isWbgtAtMost(alertC - reachOf(spread) - roundingK, input)) return missing
  return { value: wbgt(input).wbgtC, at: now, origin: estimate.origin, spread, stale: parts.some(({ stale }) => stale) }
}

function estimated(weather: WeatherAt, air: AirFacts, cos: number, now: Instant): Fact {
  if (weather.sunWm2.value !== null) return weather.sunWm2
  const cloud = air.cloudPct
  if (cloud.value === null) return missing
  const value = horizontalWm2((Math.asin(cos) * 180) / Math.PI, cloud.value)
  return { value, at: now, origin: 'forecast', spread: sunSpreadShare * value, stale: cloud.stale }
}
