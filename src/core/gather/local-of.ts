import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { relativeHumidityPct } from '../physics/air.js'
import type { AirReadings } from '../roof/correct.js'
import { type WeatherAt, weatherAt } from '../weather/at.js'
import type { Forecast } from '../weather/forecast.js'
import type { Local, Off, Read } from '../weather/local.js'
import { last, type Memory } from './memory.js'

/** What was last read of air, humidity (or the dew point, where that is newer) and wind, as known at `now`. */
export function airRead(memory: Memory, now: Instant): AirReadings {
  const [airC, rhPct, dewC] = [read(memory, now, 'airC'), read(memory, now, 'rhPct'), read(memory, now, 'dewPointC')]
  const sun = read(memory, now, 'sunWm2')
  const fromDew = airC === null || dewC === null ? null : { value: relativeHumidityPct(airC.value, Math.min(airC.value, dewC.value)), at: dewC.at }
  const dewLeads = fromDew !== null && (rhPct === null || fromDew.at > rhPct.at)
  return { airC, rhPct: dewLeads ? fromDew : rhPct, windKmh: read(memory, now, 'windKmh'), ...(sun === null ? {} : { sunWm2: sun }) }
}

function read(memory: Memory, now: Instant, key: 'airC' | 'rhPct' | 'dewPointC' | 'windKmh' | 'gustKmh' | 'sunWm2'): Read | null {
  const noted = last(memory, key)
  return noted === undefined || noted.at > now ? null : noted
}

/** Of the last question of each memory: a plan asks a hundred times with the same readings and the same forecast. */
const known = new WeakMap<Memory, { readonly forecast: Forecast; readonly asOf: Instant; readonly local: Local | null }>()

/** What the readings known at `now` say of the forecast; null where they say nothing. */
export function localOf(memory: Memory, forecast: Forecast | null, spread: LimitsSheet['spread'], now: Instant): Local | null {
  if (forecast === null) return null
  const before = known.get(memory)
  // From the last reading on nothing more is known of them.
  const asOf = Math.min(now, lastReadAt(memory))
  if (before !== undefined && before.forecast === forecast && before.asOf === asOf) return before.local
  const local = reckon(memory, forecast, spread, now)
  known.set(memory, { forecast, asOf, local })
  return local
}

const keys = ['airC', 'rhPct', 'dewPointC', 'windKmh', 'gustKmh'] as const

function lastReadAt(memory: Memory): Instant {
  return Math.max(...keys.map((key) => last(memory, key)?.at ?? Number.NEGATIVE_INFINITY))
}

function reckon(memory: Memory, forecast: Forecast, spread: LimitsSheet['spread'], now: Instant): Local | null {
  const { airC, rhPct, windKmh } = airRead(memory, now)
  const gustKmh = read(memory, now, 'gustKmh')
  if (airC === null && rhPct === null && windKmh === null && gustKmh === null) return null
  // As if just issued: how old it is changes how far it may be off, not what it said.
  const said = (at: Instant): WeatherAt => weatherAt(forecast, forecast.issuedAt, at, spread)
  const off = (each: Read | null, name: keyof Local): Off | null => {
    const value = each === null ? null : said(each.at)[name].value
    return each === null || value === null ? null : { by: each.value - value, at: each.at }
  }
  return { airC: off(airC, 'airC'), rhPct: off(rhPct, 'rhPct'), windKmh: off(windKmh, 'windKmh'), gustKmh: off(gustKmh, 'gustKmh') }
}
