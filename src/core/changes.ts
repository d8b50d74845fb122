import type { SunEvents } from './gather/daylight.js'
import type { Memory } from './gather/memory.js'
import { nearSunriseS } from './gather/roof.js'
import { dayMarks, type Instant } from './instant.js'
import type { LimitsSheet } from './limits/sheet.js'
import { trafficWaitMin } from './rules/traffic-wait.js'
import type { Forecast } from './weather/forecast.js'

/** How far ahead a change is looked for, and at how many instants at the most: an answer must come at once. */
const horizonS = 12 * 3600
const mostInstants = 20

/**
 * When an outcome is likely to change by what is known now: the first instant of today at which something said passes its
 * age, the sun sets, an hour of the forecast begins … and `outcomeAt` answers otherwise. Null when it is not seen to.
 */
export function changesAt(
  memory: Memory,
  forecast: Forecast | null,
  sun: SunEvents,
  sheet: LimitsSheet,
  now: Instant,
  outcomeAt: (at: Instant) => unknown
): Instant | null {
  const { noon, midnight } = dayMarks(sun.date, memory.settings.zone)
  const until = Math.min(now + horizonS, midnight)
  const before = outcomeAt(now)
  for (const at of instants(memory, forecast, sun, sheet, now, until, noon)) {
    if (outcomeAt(at) !== before) return at
  }
  return null
}

function instants(
  memory: Memory,
  forecast: Forecast | null,
  sun: SunEvents,
  sheet: LimitsSheet,
  now: Instant,
  until: Instant,
  noon: Instant
): Instant[] {
  const ages = [...new Set([...Object.values(sheet.maxAgeMin), sheet.kit.mixedMaxMin, 30])].map((min) => min * 60 + 1)
  const said = Object.values({ ...memory.yesterday.latest, ...memory.today.latest }).map((noted) => noted?.at ?? now)
  const { kit, today, yesterday } = memory
  const more = [kit.isoC?.at, kit.resinC?.at, kit.mixed?.at, today.thunderHeardAt, yesterday.thunderHeardAt].flatMap((at) => at ?? [])
  const all = [...new Set([...said, ...more])].flatMap((at) => ages.map((age) => at + age))
  const relaxed = memory.today.latest.sheet
  if (today.laidAt !== null) all.push(today.laidAt + trafficWaitMin * 60)
  if (relaxed) all.push(relaxed.at + sheet.sheet.relaxMin * 60, relaxed.at + sheet.sheet.relaxColdMin * 60)
  for (const set of sun.sets) all.push(set - sheet.site.closeUpMin * 60 - 1800 + 1, set - sheet.site.closeUpMin * 60 + 1)
  for (const rise of sun.rises) all.push(rise - nearSunriseS, rise)
  all.push(noon)
  for (const hour of forecast?.hours ?? []) all.push(hour.at, hour.at - 3600 * 2)
  const ahead = all.filter((at) => at > now && at <= until)
  return [...new Set(ahead)].sort((a, b) => a - b).slice(0, mostInstants)
}
