import type { Instant } from '../instant.js'
import { round6 } from '../units.js'
import type { Forecast } from './forecast.js'
import { ageOf, hourHolding, hoursOver } from './lookup.js'

export interface RainAhead {
  /** Chance that it rains in at least one of the hours, 0…100 %; null when an hour has none. */
  readonly chancePct: number | null
  /** Sum over the hours; null when an hour has none. */
  readonly amountMm: number | null
}

export interface ThunderAhead {
  readonly thisHour: boolean | null
  readonly within2h: boolean | null
}

/**
 * Rain over every hour that overlaps (from, from + minutes): chance 1 − Π(1 − p), the hours taken as independent
 * (on the careful side: rain comes in spells), amounts added whole. Nothing is said of a forecast older than 12 h.
 */
export function rainAhead(forecast: Forecast | null, now: Instant, from: Instant, minutes: number): RainAhead {
  const hours = forecast === null || ageOf(forecast, now) === 'dead' ? null : hoursOver(forecast.hours, from, minutes)
  if (hours === null) return { chancePct: null, amountMm: null }
  let dry: number | null = 1
  let amountMm: number | null = 0
  for (const hour of hours) {
    dry = dry === null || hour.rainChancePct === null ? null : dry * (1 - hour.rainChancePct / 100)
    amountMm = amountMm === null || hour.rainMm === null ? null : amountMm + hour.rainMm
  }
  return { chancePct: dry === null ? null : round6(100 * (1 - dry)), amountMm: amountMm === null ? null : round6(amountMm) }
}

/** Thunder in the hour that holds `from`, and in any hour that overlaps the two hours after it. */
export function thunderAhead(forecast: Forecast | null, now: Instant, from: Instant): ThunderAhead {
  if (forecast === null || ageOf(forecast, now) === 'dead') return { thisHour: null, within2h: null }
  const thisHour = hourHolding(forecast.hours, from)?.thunder ?? null
  const nextHour = hourHolding(forecast.hours, from + 3600)?.thunder ?? null
  const lastHour = hourHolding(forecast.hours, from + 7199)?.thunder ?? null
  if (thisHour === true || nextHour === true || lastHour === true) return { thisHour, within2h: true }
  return { thisHour, within2h: thisHour === null || nextHour === null || lastHour === null ? null : false }
}
