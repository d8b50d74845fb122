import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { type RoofSeries, roofAt } from '../roof/series.js'
import { type WeatherAt, weatherAt } from '../weather/at.js'
import type { Forecast } from '../weather/forecast.js'
import type { Local } from '../weather/local.js'
import { ageOf } from '../weather/lookup.js'
import type { DaySeries, RainBar, SpreadPoint } from './day-chart.js'

const stepS = 1800
const hourS = 3600
/** A local day has at most 25 hours, and one more mark than steps. */
const mostSteps = 52

/**
 * Lines and bars of a span of at most 26 h, as known at `now`: the weather by the forecast, the substrate by the simulated roof.
 * `local`: what readings on the roof say of the forecast, so that the lines agree with the hours. Pure.
 */
export function daySeries(
  forecast: Forecast | null,
  roof: RoofSeries | null,
  now: Instant,
  from: Instant,
  to: Instant,
  spread: LimitsSheet['spread'],
  local: Local | null = null
): DaySeries {
  const count = Math.min(mostSteps, Math.floor((to - from) / stepS))
  const instants = Array.from({ length: Math.max(0, count) + 1 }, (_, index) => from + index * stepS)
  const all = instants.map((at) => ({ at, weather: weatherAt(forecast, now, at, spread, local) }))
  const line = (name: 'airC' | 'dewPointC' | 'windKmh' | 'gustKmh') => all.map(({ at, weather }) => ({ at, value: fact(weather, name) }))
  return {
    airC: line('airC'),
    dewPointC: line('dewPointC'),
    substrateC: substrateLine(roof, instants),
    windKmh: line('windKmh'),
    // The highest of an hour, at the middle of it: in between it would be a stair.
    gustKmh: line('gustKmh').filter((_, index) => index % 2 === 1),
    rain: rainBars(forecast, now, from, to)
  }
}

/** Null where nothing is known of the surface at any of the instants. */
function substrateLine(roof: RoofSeries | null, instants: readonly Instant[]): readonly SpreadPoint[] | null {
  const points = instants.map((at) => {
    const { value, spread } = roofAt(roof, at).substrate.surfaceC
    return { at, value, spread }
  })
  return points.some(({ value }) => value !== null) ? points : null
}

function fact(weather: WeatherAt, name: 'airC' | 'dewPointC' | 'windKmh' | 'gustKmh'): number | null {
  return weather[name].value
}

/** Rain and its chance belong to the hour that ends at `at`. */
function rainBars(forecast: Forecast | null, now: Instant, from: Instant, to: Instant): readonly RainBar[] {
  if (forecast === null || ageOf(forecast, now) === 'dead') return []
  return forecast.hours
    .filter((hour) => hour.at > from && hour.at - hourS < to)
    .map((hour) => ({ from: hour.at - hourS, to: hour.at, mmPerHour: hour.rainMm, chancePct: hour.rainChancePct }))
}
