import type { Instant } from '../instant.js'
import { dewPointC, relativeHumidityPct, standardPressureHpa } from '../physics/air.js'
import { windAtRoofKmh } from '../physics/convection.js'
import { gammaKpaK } from '../physics/evaporation.js'
import { within } from '../physics/range.js'
import { humidAir } from '../weather/estimates.js'
import type { Hour } from '../weather/hour.js'
import { type AirReadings, correct } from './correct.js'
import { line, ofHour } from './line.js'

export const hourS = 3600
/** A step of the balance, s. */
export const stepS = 300
export const perHour = hourS / stepS
/** How far a run reaches back and ahead of the instant it is known at. */
const backS = 36 * hourS
const farthestAheadS = 72 * hourS
/** Cloud that nobody told of, %: under half, so that it is moved towards a full cover, which takes most of the sun. Source: from memory. */
const unknownCloudPct = 45
const unknownCloudSpreadPct = 45
/** Spreads that no limit hangs on, as in `weather/at.ts`. Source: from memory. */
const cloudSpreadPct = 20

/** Which of the values a run moves by its spread. */
export type Moved = 'nothing' | 'air' | 'humidity' | 'wind' | 'cloud' | 'start'

export interface Weather {
  readonly lat: number
  readonly lon: number
  /** Height of the roof over the ground, m. */
  readonly heightM: number
  /** The instant everything is looked at from. */
  readonly knownAt: Instant
  readonly issuedAt: Instant
  /** How far ahead of `knownAt` is asked for, s; 72 h at the most, and when not said. */
  readonly aheadS?: number
  readonly spread: { readonly airK: number; readonly rhPct: number; readonly windKmh: number }
  readonly read: AirReadings
}

/** The weather over the roof at full hours without a gap: instants at each, sums of the hour that begins there (NaN: not told). */
export interface Nodes {
  readonly startAt: Instant
  readonly count: number
  readonly airC: Float64Array
  readonly rhPct: Float64Array
  readonly dewC: Float64Array
  readonly windKmh: Float64Array
  readonly cloudPct: Float64Array
  readonly sunWm2: Float64Array
  readonly rainMm: Float64Array
  readonly chancePct: Float64Array
  /** One standard deviation of each. */
  readonly spread: { readonly airK: Float64Array; readonly rhPct: Float64Array; readonly windKmh: Float64Array; readonly cloudPct: Float64Array }
  /** Sun read on the roof, W/m², and in which step; null where nobody read it. */
  readonly sunRead: { readonly step: number; readonly wm2: number } | null
  /** Psychrometric constant at the mean pressure, Pa/K. */
  readonly gammaPaK: number
}

/**
 * The stretch of hours around `knownAt`, else the next one after it, that holds without a gap of more than 3 h (6 h between two
 * known values); null where there is none. RangeError for a NaN or an impossible value.
 */
export function nodesOf(hours: readonly Hour[], weather: Weather): Nodes | null {
  for (const hour of hours) refuseNonsense(hour)
  const first = hours[0]
  const last = hours.at(-1)
  if (first === undefined || last === undefined) return null
  const aheadS = Math.min(farthestAheadS, weather.aheadS ?? farthestAheadS) + hourS
  const startAt = Math.ceil(Math.max(first.at, weather.knownAt - backS) / hourS) * hourS
  const count = Math.floor((Math.min(last.at, weather.knownAt + aheadS) - startAt) / hourS) + 1
  if (!(count >= 2)) return null
  const roofWind = (hour: Hour) => (hour.windKmh === null ? null : windAtRoofKmh(Math.min(300, hour.windKmh), weather.heightM))
  const { hours: moved, left } = correct(
    hours.map((hour) => ({ ...hour, windKmh: roofWind(hour) })),
    weather.read,
    weather.spread
  )
  const air = line(moved, (hour) => hour.airC, startAt, count)
  const rh = line(moved, rhOf, startAt, count)
  const wind = line(moved, (hour) => hour.windKmh, startAt, count)
  const [from, to] = stretch(air.value, rh.value, wind.value, (weather.knownAt - startAt) / hourS)
  if (to - from < 2) return null
  const cloud = line(moved, (hour) => hour.cloudPct, startAt, count)
  const cut = (values: Float64Array) => values.subarray(from, to)
  const wide = (own: number, each: Float64Array, held: Float64Array) => cut(widened(own, hours, each, held, startAt, count, weather))
  return {
    startAt: startAt + from * hourS,
    count: to - from,
    airC: cut(air.value),
    rhPct: cut(rh.value),
    dewC: dewPoints(cut(air.value), cut(rh.value)),
    windKmh: cut(wind.value),
    cloudPct: cut(cloud.value.map((pct) => (Number.isNaN(pct) ? unknownCloudPct : pct))),
    sunWm2: cut(ofHour(hours, (hour) => hour.sunWm2, startAt, count)),
    rainMm: cut(ofHour(hours, (hour) => hour.rainMm, startAt, count)),
    chancePct: cut(ofHour(hours, (hour) => hour.rainChancePct, startAt, count)),
    spread: {
      airK: wide(weather.spread.airK, left.airC, air.heldH),
      rhPct: wide(weather.spread.rhPct, left.rhPct, rh.heldH),
      windKmh: wide(windAtRoofKmh(weather.spread.windKmh, weather.heightM), left.windKmh, wind.heldH),
      cloudPct: cut(cloud.value.map((pct) => (Number.isNaN(pct) ? unknownCloudSpreadPct : cloudSpreadPct)))
    },
    sunRead: sunReadIn(weather.read, startAt + from * hourS),
    gammaPaK: 1000 * gammaKpaK(pressureOf(hours))
  }
}

export function dewPoints(airC: Float64Array, rhPct: Float64Array): Float64Array {
  // Lower than the formulas reach, which only the driest and coldest air is, changes nothing any more.
  return airC.map((c, i) => Math.max(-110, dewPointC(c, rhPct[i] as number)))
}

function sunReadIn({ sunWm2 }: AirReadings, startAt: Instant): Nodes['sunRead'] {
  return sunWm2 === undefined ? null : { step: Math.floor((sunWm2.at - startAt) / stepS), wm2: sunWm2.value }
}

function rhOf({ airC, rhPct, dewPointC }: Hour): number | null {
  if (airC !== null && dewPointC !== null) return relativeHumidityPct(airC, Math.min(airC, dewPointC))
  return humidAir(airC, rhPct, dewPointC).rhPct
}

function pressureOf(hours: readonly Hour[]): number {
  let [sum, count] = [0, 0]
  for (const { pressureHpa } of hours) {
    if (pressureHpa === null) continue
    sum += pressureHpa
    count += 1
  }
  return count === 0 ? standardPressureHpa : sum / count
}

/** Spread at each node: × √(1 + lead h / 24), doubled when stale, wider by the hour while a value is only held, less near a reading. */
function widened(
  own: number,
  hours: readonly Hour[],
  left: Float64Array,
  held: Float64Array,
  startAt: Instant,
  count: number,
  weather: Weather
): Float64Array {
  const { issuedAt, knownAt } = weather
  const stale = knownAt - issuedAt > 3 * hourS ? 2 : 1
  const share = line(hours, (_, index) => left[index] ?? 1, startAt, count).value
  return held.map((hoursHeld, index) => {
    const leadH = Math.max(0, startAt + index * hourS - issuedAt) / hourS
    return own * stale * Math.sqrt(1 + leadH / 24) * (1 + hoursHeld) * (share[index] || 1)
  })
}

/** [from, to) of the nodes with everything, around a node or else the first after it. */
function stretch(air: Float64Array, rh: Float64Array, wind: Float64Array, around: number): readonly [number, number] {
  const whole = (index: number) => !Number.isNaN((air[index] as number) + (rh[index] as number) + (wind[index] as number))
  let from = Math.max(0, Math.floor(around))
  while (from < air.length && !whole(from)) from += 1
  let to = from
  while (to < air.length && whole(to)) to += 1
  while (from > 0 && whole(from - 1)) from -= 1
  return [from, to]
}

function refuseNonsense(hour: Hour): void {
  within('at', hour.at, -1e11, 1e11)
  if (hour.airC !== null) within('airC', hour.airC, -90, 60)
  if (hour.rhPct !== null) within('rhPct', hour.rhPct, 0.01, 100)
  if (hour.dewPointC !== null) within('dewPointC', hour.dewPointC, -110, 60)
  if (hour.windKmh !== null) within('windKmh', hour.windKmh, 0, 500)
  if (hour.cloudPct !== null) within('cloudPct', hour.cloudPct, 0, 100)
  if (hour.pressureHpa !== null) within('pressureHpa', hour.pressureHpa, 500, 1100)
  if (hour.sunWm2 !== null) within('sunWm2', hour.sunWm2, 0, 1500)
  if (hour.rainMm !== null) within('rainMm', hour.rainMm, 0, 500)
  if (hour.rainChancePct !== null) within('rainChancePct', hour.rainChancePct, 0, 100)
}
