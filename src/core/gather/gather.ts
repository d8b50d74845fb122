import { type Fact, rounded } from '../fact.js'
import type { Facts } from '../facts.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import type { RoofSeries } from '../roof/series.js'
import { round6 } from '../units.js'
import { weatherAt } from '../weather/at.js'
import type { Forecast } from '../weather/forecast.js'
import { hoursKnown } from '../weather/lookup.js'
import { clearance } from '../welds/clearance.js'
import { type AirFacts, gatherAir } from './air.js'
import { type ChecklistFacts, checklists } from './checklist.js'
import { daylight, type SunEvents } from './daylight.js'
import { localOf } from './local-of.js'
import { type Memory, saidOf } from './memory.js'
import { gatherRoof, type RoofFacts } from './roof.js'
import { gatherSky, type SkyFacts } from './sky.js'
import { gatherWbgt } from './wbgt.js'

/**
 * Everything the rules need at one instant: what the log says where it is in force, what the forecast says elsewhere.
 * `sun` holds the events of the site's local date at `now`. For an instant to come `knownAt` is when the forecast is looked
 * at: its age counts from there, its spread grows with the hours ahead. `roof` is that of `roofOf`, known at `knownAt` too; null: only
 * readings tell of the surfaces. Pure.
 */
export function gather(
  memory: Memory,
  forecast: Forecast | null,
  sun: SunEvents,
  sheet: LimitsSheet,
  now: Instant,
  knownAt: Instant = now,
  roof: RoofSeries | null = null
): Facts {
  return gatherer(memory, forecast, sun, sheet, knownAt, roof)(now)
}

/** The same for many instants, each as it will be known then. */
export function gathererThen(memory: Memory, forecast: Forecast | null, sun: SunEvents, sheet: LimitsSheet, roof: RoofSeries | null) {
  const factsAt = gatheredAt(memory, forecast, sun, sheet, roof)
  return (now: Instant): Facts => factsAt(now, knownThen(memory, forecast, sheet, now))
}

/** The same for many instants: what hangs on none of them is looked up once. */
export function gatherer(
  memory: Memory,
  forecast: Forecast | null,
  sun: SunEvents,
  sheet: LimitsSheet,
  knownAt: Instant,
  roof: RoofSeries | null
): (now: Instant) => Facts {
  const factsAt = gatheredAt(memory, forecast, sun, sheet, roof)
  const known = knownThen(memory, forecast, sheet, knownAt)
  return (now) => factsAt(now, known)
}

/** What hangs on when the forecast is looked at. */
function knownThen(memory: Memory, forecast: Forecast | null, sheet: LimitsSheet, knownAt: Instant) {
  return { knownAt, local: localOf(memory, forecast, sheet.spread, knownAt), hours: hoursKnown(forecast, knownAt) }
}

function gatheredAt(memory: Memory, forecast: Forecast | null, sun: SunEvents, sheet: LimitsSheet, roof: RoofSeries | null) {
  const said = saidOf(memory)
  const checklistAt = checklists(memory, sheet, sun.date)
  return (now: Instant, { knownAt, local, hours }: ReturnType<typeof knownThen>): Facts => {
    const weather = weatherAt(forecast, knownAt, now, sheet.spread, local)
    const air = gatherAir(said, weather, sheet, now)
    const sky = gatherSky(memory, said, weather, forecast, sheet, now, knownAt)
    const surfaces = gatherRoof({ memory, said, air, raining: sky.rainFalling, sun, sheet, roof }, now)
    const light = daylight(sun, now, sheet.site.closeUpMin)
    const weldNow = { airC: air.airC, sheetC: surfaces.sheetC, windKmh: air.windKmh, cloudPct: air.cloudPct, rainFalling: sky.rainFalling }
    const around = { now, zone: memory.settings.zone, facts: weldNow, today: memory.today, hours }
    const welders = memory.welders.map((welder) => clearance(welder, around, sheet))
    const wbgtC = gatherWbgt(memory, said, air, weather, sheet, now, knownAt)
    return inOne({ air, sky, surfaces, light, checklist: checklistAt(now), welders, wbgtC }, now, sun.date)
  }
}

interface Parts {
  readonly air: AirFacts
  readonly sky: SkyFacts
  readonly surfaces: RoofFacts
  readonly light: ReturnType<typeof daylight>
  readonly checklist: ChecklistFacts
  readonly welders: Facts['welders']
  readonly wbgtC: Fact
}

/**
 * Member by member: spreading five parts into one object of forty is ten times as slow, and a plan does this for every quarter of an
 * hour. In order of name, as a decision is hashed.
 */
function inOne({ air, sky, surfaces, light, checklist, welders, wbgtC }: Parts, now: Instant, today: string): Facts {
  return {
    airC: rounded(air.airC),
    at: now,
    cloudPct: rounded(air.cloudPct),
    compatibility: checklist.compatibility,
    daylightMin: light.daylightMin === null ? null : round6(light.daylightMin),
    deckMoisture: checklist.deckMoisture,
    dewPointC: rounded(air.dewPointC),
    dropPct: rounded(checklist.dropPct),
    feltC: rounded(air.feltC),
    fleeceDry: surfaces.fleeceDry,
    gustKmh: rounded(air.gustKmh),
    heatIndexC: rounded(air.heatIndexC),
    intakes: checklist.intakes,
    kit: checklist.kit,
    laidAt: checklist.laidAt,
    lapClean: checklist.lapClean,
    noThunder: sky.noThunder,
    powerMeasured: checklist.powerMeasured,
    rainAmountMm: rounded(sky.rainAmountMm),
    rainChancePct: rounded(sky.rainChancePct),
    rainFalling: sky.rainFalling,
    rhPct: rounded(air.rhPct),
    seamDry: surfaces.seamDry,
    sheetC: rounded(surfaces.sheetC),
    sheetDewMarginK: rounded(surfaces.sheetDewMarginK),
    sheetState: checklist.sheetState,
    startUp: checklist.startUp,
    substrateC: rounded(surfaces.substrateC),
    substrateClean: checklist.substrateClean,
    substrateDewMarginK: rounded(surfaces.substrateDewMarginK),
    substrateDry: surfaces.substrateDry,
    substrateKind: checklist.substrateKind,
    sunUp: light.sunUp,
    surfaceWet: surfaces.surfaceWet,
    thumbTest: checklist.thumbTest,
    thunderHeardAt: sky.thunderHeardAt,
    thunderThisHour: sky.thunderThisHour,
    thunderWithin2h: sky.thunderWithin2h,
    today,
    wbgtC: rounded(wbgtC),
    welders,
    windKmh: rounded(air.windKmh)
  }
}
