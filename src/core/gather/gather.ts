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
  const light = daylight(sun, now, sheet.site.closeUpMin)
  const checklist = gatherChecklist(memory, sheet, now, sun.date)
  const { zone } = memory.settings
  const weldNow = { airC: air.airC, sheetC: roof.sheetC, windKmh: air.windKmh, cloudPct: air.cloudPct, rainFalling: sky.rainFalling }
  // Member by member: spreading five parts into one object of forty is ten times as slow, and a plan does this for every quarter of an hour.
  return {
    at: now,
    today: sun.date,
    airC: rounded(air.airC),
    rhPct: rounded(air.rhPct),
    dewPointC: rounded(air.dewPointC),
    substrateC: rounded(roof.substrateC),
    sheetC: rounded(roof.sheetC),
    substrateDewMarginK: rounded(roof.substrateDewMarginK),
    sheetDewMarginK: rounded(roof.sheetDewMarginK),
    windKmh: rounded(air.windKmh),
    gustKmh: rounded(air.gustKmh),
    cloudPct: rounded(air.cloudPct),
    heatIndexC: rounded(air.heatIndexC),
    feltC: rounded(air.feltC),
    wbgtC: missing,
    rainFalling: sky.rainFalling,
    rainChancePct: rounded(sky.rainChancePct),
    rainAmountMm: rounded(sky.rainAmountMm),
    sunUp: light.sunUp,
    daylightMin: light.daylightMin === null ? null : round6(light.daylightMin),
    substrateDry: roof.substrateDry,
    fleeceDry: roof.fleeceDry,
    seamDry: roof.seamDry,
    substrateClean: checklist.substrateClean,
    lapClean: checklist.lapClean,
    compatibility: checklist.compatibility,
    intakes: checklist.intakes,
    substrateKind: checklist.substrateKind,
    deckMoisture: checklist.deckMoisture,
    sheetState: checklist.sheetState,
    kit: checklist.kit,
    startUp: checklist.startUp,
    welders: memory.welders.map((welder) => clearance(welder, now, zone, weldNow, lastRain(memory), sheet)),
    dropPct: rounded(checklist.dropPct),
    powerMeasured: checklist.powerMeasured,
    laidAt: checklist.laidAt,
    thumbTest: checklist.thumbTest,
    thunderHeardAt: sky.thunderHeardAt,
    noThunder: sky.noThunder,
    thunderThisHour: sky.thunderThisHour,
    thunderWithin2h: sky.thunderWithin2h,
    surfaceWet: roof.surfaceWet
  }
}

/** Six decimals, as they are kept: a replay then starts from the very same numbers. */
function rounded(fact: Fact): Fact {
  if (fact.value === null) return fact
  const { at, origin, stale } = fact
  return { value: round6(fact.value), at, origin, spread: round6(fact.spread), stale }
}
