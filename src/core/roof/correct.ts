import type { Instant } from '../instant.js'
import { dewPointC } from '../physics/air.js'
import { humidAir } from '../weather/estimates.js'
import type { Hour } from '../weather/hour.js'
import { added, type Off, type Read, readingSpread, spreadNear } from '../weather/local.js'

export interface AirReadings {
  readonly airC: Read | null
  readonly rhPct: Read | null
  readonly windKmh: Read | null
  /** On a level surface; absent where nobody read it. */
  readonly sunWm2?: Read
}

/** Hours moved by what was read, and by how much the spread of each value is left: 1 far from a reading. */
export interface Corrected {
  readonly hours: readonly Hour[]
  readonly left: { readonly airC: Float64Array; readonly rhPct: Float64Array; readonly windKmh: Float64Array }
}

/**
 * Local correction: each reading moves the hours before and after it by what the forecast was off, fading with 6 h, and takes
 * from their spread what is now known; `spread` is that of the forecast. Humidity leads the dew point. Pure.
 */
export function correct(hours: readonly Hour[], read: AirReadings, spread: { airK: number; rhPct: number; windKmh: number }): Corrected {
  const air = offOf(hours, read.airC, 'airC')
  const rh = offOf(hours, read.rhPct, 'rhPct')
  const wind = offOf(hours, read.windKmh, 'windKmh')
  const left = {
    airC: leftOf(hours, air, spread.airK, readingSpread.airK),
    rhPct: leftOf(hours, rh, spread.rhPct, readingSpread.rhPct),
    windKmh: leftOf(hours, wind, spread.windKmh, readingSpread.windKmh)
  }
  if (air === null && rh === null && wind === null) return { hours, left }
  return { hours: hours.map((hour) => moved(hour, added(air, hour.at), added(rh, hour.at), added(wind, hour.at))), left }
}

/** By how much an instant is off, from a reading; null where there is none or the forecast says nothing there. */
function offOf(hours: readonly Hour[], read: Read | null, name: 'airC' | 'rhPct' | 'windKmh'): Off | null {
  if (read === null) return null
  const said = valueAt(hours, read.at, name)
  return said === null ? null : { by: read.value - said, at: read.at }
}

function leftOf(hours: readonly Hour[], off: Off | null, spread: number, own: number): Float64Array {
  const left = new Float64Array(hours.length).fill(1)
  if (off === null || !(spread > 0)) return left
  return left.map((_, index) => spreadNear(spread, off, own, (hours[index] as Hour).at) / spread)
}

function moved(hour: Hour, airK: number, rhPct: number, windKmh: number): Hour {
  const { airC, rhPct: rh } = humidAir(hour.airC, hour.rhPct, hour.dewPointC)
  const air = airC === null ? null : Math.min(60, Math.max(-89, airC + airK))
  const humid = rh === null ? null : Math.min(100, Math.max(1, rh + rhPct))
  return {
    ...hour,
    airC: air,
    rhPct: humid,
    dewPointC: air === null || humid === null ? hour.dewPointC : dewPointC(air, humid),
    windKmh: hour.windKmh === null ? null : Math.max(0, hour.windKmh + windKmh)
  }
}

function valueAt(hours: readonly Hour[], at: Instant, name: 'airC' | 'rhPct' | 'windKmh'): number | null {
  const after = hours.findIndex((hour) => hour.at > at)
  const left = hours[after < 0 ? hours.length - 1 : after - 1]
  if (left === undefined || at - left.at > 3 * 3600) return null
  const right = after < 0 ? undefined : hours[after]
  const [from, to] = [valueIn(left, name), right === undefined ? null : valueIn(right, name)]
  if (from === null || right === undefined || to === null) return from
  return from + ((to - from) * (at - left.at)) / (right.at - left.at)
}

function valueIn(hour: Hour, name: 'airC' | 'rhPct' | 'windKmh'): number | null {
  return name === 'rhPct' ? humidAir(hour.airC, hour.rhPct, hour.dewPointC).rhPct : hour[name]
}
