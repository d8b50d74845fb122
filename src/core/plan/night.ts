import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { weatherAt } from '../weather/at.js'
import type { Forecast } from '../weather/forecast.js'
import type { Range } from './outlook.js'

/** The hours between two days of work, by the forecast. */
export interface Night {
  readonly airC: Range | null
  readonly gustKmh: Range | null
  readonly rainChancePct: Range | null
  /** In all, mm; null where no hour tells. */
  readonly rainMm: number | null
}

const hourS = 3600
const mostHours = 24

/**
 * What the forecast says of the hours from an instant to another, as known at the first: both ends included, at most 24 h. All
 * null without a forecast that still says something. Gusts are estimated where the source has none. Pure.
 */
export function nightOf(forecast: Forecast | null, sheet: LimitsSheet, from: Instant, to: Instant): Night {
  const first = Math.ceil(from / hourS) * hourS
  const count = Math.min(mostHours, Math.max(0, Math.floor((to - first) / hourS) + 1))
  const hours = Array.from({ length: count }, (_, index) => weatherAt(forecast, from, first + index * hourS, sheet.spread))
  const rain = hours.flatMap(({ rainMm }) => rainMm ?? [])
  return {
    airC: range(hours.flatMap(({ airC }) => airC.value ?? [])),
    gustKmh: range(hours.flatMap(({ gustKmh }) => gustKmh.value ?? [])),
    rainChancePct: range(hours.flatMap(({ rainChancePct }) => rainChancePct ?? [])),
    rainMm: rain.length === 0 ? null : rain.reduce((sum, mm) => sum + mm, 0)
  }
}

function range(values: readonly number[]): Range | null {
  return values.length === 0 ? null : { min: Math.min(...values), max: Math.max(...values) }
}
