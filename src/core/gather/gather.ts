import { type Fact, missing } from '../fact.js'
import type { Facts } from '../facts.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { round6 } from '../units.js'
import { weatherAt } from '../weather/at.js'
import type { Forecast } from '../weather/forecast.js'
import { clearance } from '../welds/clearance.js'
import { gatherAir } from './air.js'
import { gatherChecklist } from './checklist.js'
import { daylight, type SunEvents } from './daylight.js'
import { lastRain, type Memory } from './memory.js'
import { gatherRoof } from './roof.js'
import { gatherSky } from './sky.js'

/**
 * Everything the rules need at one instant: what the log says where it is in force, what the forecast says elsewhere.
 * `sun` holds the events of the site's local date at `now`. For an instant to come `knownAt` is when the forecast is looked
 * at: its age counts from there, its spread grows with the hours ahead. Pure.
 */
export function gather(memory: Memory, forecast: Forecast | null, sun: SunEvents, sheet: LimitsSheet, now: Instant, knownAt: Instant = now): Facts {
  const weather = weatherAt(forecast, knownAt, now, sheet.spread)
  const air = gatherAir(memory, weather, sheet, now)
  const sky = gatherSky(memory, weather, forecast, sheet, now, knownAt)
  const roof = gatherRoof(memory, air, sky.rainFalling, sun, sheet, now)
  const conditions = { ...air, ...sky, ...roof }
  const { zone } = memory.settings
  return rounded({
    at: now,
    today: sun.date,
    ...conditions,
    wbgtC: missing,
    ...daylight(sun, now, sheet.site.closeUpMin),
    ...gatherChecklist(memory, sheet, now, sun.date),
    welders: memory.welders.map((welder) => clearance(welder, now, zone, conditions, lastRain(memory), sheet))
  })
}

/** Six decimals, as they are kept: a replay then starts from the very same numbers. */
function rounded(facts: Facts): Facts {
  const result: Record<string, unknown> = { ...facts, daylightMin: facts.daylightMin === null ? null : round6(facts.daylightMin) }
  for (const [key, fact] of Object.entries(result)) {
    if (isFact(fact)) result[key] = { ...fact, value: round6(fact.value), spread: round6(fact.spread) }
  }
  return result as unknown as Facts
}

function isFact(value: unknown): value is Fact & { value: number } {
  return typeof value === 'object' && value !== null && 'spread' in value && typeof (value as Fact).value === 'number'
}
