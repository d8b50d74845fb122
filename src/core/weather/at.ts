import { type Fact, missing } from '../fact.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { dewSpreadK, gustOver, humidAir } from './estimates.js'
import type { Forecast } from './forecast.js'
import type { Hour } from './hour.js'
import type { Local } from './local.js'
import { ageOf, firstAfter, hourHolding } from './lookup.js'
import { moved, type Plain, widened } from './moved.js'

export interface WeatherAt {
  readonly airC: Fact
  readonly rhPct: Fact
  readonly dewPointC: Fact
  readonly windKmh: Fact
  readonly gustKmh: Fact
  readonly cloudPct: Fact
  readonly pressureHpa: Fact
  readonly sunWm2: Fact
  /** Of the hour that holds the instant. */
  readonly rainMm: number | null
  readonly rainChancePct: number | null
  readonly thunder: boolean | null
}

type Spread = LimitsSheet['spread']
type Read = (hour: Hour) => number | null
/** By functions, which is several times as fast as by names: a plan asks for a thousand. */
const reads = {
  airC: (hour: Hour) => hour.airC,
  rhPct: (hour: Hour) => hour.rhPct,
  dewPointC: (hour: Hour) => hour.dewPointC,
  windKmh: (hour: Hour) => hour.windKmh,
  cloudPct: (hour: Hour) => hour.cloudPct,
  pressureHpa: (hour: Hour) => hour.pressureHpa
} as const

/** Widest gap that is bridged in a straight line: the 6-hour steps of the later days. */
const bridgeS = 6 * 3600
/** Spreads that no limit hangs on, so that no sheet has them. Source: from memory. */
const cloudSpreadPct = 20
const pressureSpreadHpa = 2
const sunSpreadShare = 0.25

/**
 * What a forecast says of an instant `at`, as known at `now`: instants in a straight line between the hours, sums, means
 * and maxima of the hour that holds it. Spreads × √(1 + lead h / 24), doubled when issued more than 3 h before `now`; all
 * null beyond 12 h. Estimates where the source has none: gust from the mean wind, dew point from humidity and the reverse.
 * `local`: what readings on the roof say of this forecast; it moves air, humidity and wind, fading.
 */
export function weatherAt(forecast: Forecast | null, now: Instant, at: Instant, spread: Spread, local: Local | null = null): WeatherAt {
  if (forecast === null) return nothing(missing)
  const age = ageOf(forecast, now)
  if (age === 'dead') return nothing({ ...missing, stale: true })
  const stale = age === 'stale'
  const widen = Math.sqrt(1 + Math.max(0, at - forecast.issuedAt) / 86400) * (stale ? 2 : 1)
  const fact = (value: number | null, sigma: number): Fact =>
    value === null ? { ...missing, stale } : { value, at, origin: 'forecast', spread: sigma, stale }
  const hours = forecast.hours
  const index = firstAfter(hours, at)
  const line = (read: Read): number | null => between(hours, index, at, read)
  const hour = hourHolding(hours, at)
  const meanKmh = line(reads.windKmh)
  const plain: Plain = {
    air: humidAir(line(reads.airC), line(reads.rhPct), line(reads.dewPointC)),
    windKmh: meanKmh,
    gustKmh: gustOver(hour?.gustKmh ?? null, meanKmh),
    gustEstimated: hour === null || hour.gustKmh === null,
    spread: widened(spread, widen)
  }
  const { air, windKmh, gustKmh, gustEstimated, spread: wide } = local === null ? plain : moved(plain, local, at)
  const sunWm2 = hour?.sunWm2 ?? null
  return {
    airC: fact(air.airC, wide.airK),
    rhPct: fact(air.rhPct, wide.rhPct),
    dewPointC: fact(air.dewC, dewSpreadK(air, wide)),
    windKmh: fact(windKmh, wide.windKmh),
    gustKmh: fact(gustKmh, gustEstimated ? wide.gustEstimatedKmh : wide.gustKmh),
    cloudPct: fact(line(reads.cloudPct), cloudSpreadPct * widen),
    pressureHpa: fact(line(reads.pressureHpa), pressureSpreadHpa * widen),
    sunWm2: fact(sunWm2, sunSpreadShare * widen * (sunWm2 ?? 0)),
    rainMm: hour?.rainMm ?? null,
    rainChancePct: hour?.rainChancePct ?? null,
    thunder: hour?.thunder ?? null
  }
}

function nothing(fact: Fact): WeatherAt {
  const instants = { airC: fact, rhPct: fact, dewPointC: fact, windKmh: fact, cloudPct: fact, pressureHpa: fact }
  return { ...instants, gustKmh: fact, sunWm2: fact, rainMm: null, rainChancePct: null, thunder: null }
}

/** The nearest hours on both sides that have the value, at most 6 h apart. Nothing is carried on beyond the last one. */
function between(hours: readonly Hour[], index: number, at: Instant, read: Read): number | null {
  const left = nearest(hours, index - 1, -1, at, read)
  if (left === null) return null
  const from = read(left)
  if (left.at === at || from === null) return from
  const right = nearest(hours, index, 1, at, read)
  const to = right === null ? null : read(right)
  if (right === null || to === null || right.at - left.at > bridgeS) return null
  return from + ((to - from) * (at - left.at)) / (right.at - left.at)
}

function nearest(hours: readonly Hour[], start: number, step: 1 | -1, at: Instant, read: Read): Hour | null {
  for (let index = start; ; index += step) {
    const hour = hours[index]
    if (hour === undefined || Math.abs(hour.at - at) > bridgeS) return null
    if (read(hour) !== null) return hour
  }
}
