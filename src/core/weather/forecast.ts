import type { Instant } from '../instant.js'
import { toIso } from '../instant.js'
import { canonical } from '../log/canonical.js'
import { sha256 } from '../log/sha256.js'
import { round6 } from '../units.js'

/**
 * One hour of a source. Temperature, humidity, dew point, mean wind, cloud and pressure are instants at `at`;
 * gust, rain, chance, thunder and sun belong to the hour that ends at `at`. What a source lacks is null, never 0.
 */
export interface Hour {
  readonly at: Instant
  readonly airC: number | null
  readonly rhPct: number | null
  readonly dewPointC: number | null
  readonly windKmh: number | null
  readonly cloudPct: number | null
  /** At the ground, not reduced to sea level. */
  readonly pressureHpa: number | null
  /** Null where the source has no gust: it is then estimated from the mean wind. */
  readonly gustKmh: number | null
  readonly rainMm: number | null
  readonly rainChancePct: number | null
  readonly thunder: boolean | null
  readonly sunWm2: number | null
}

export interface Forecast {
  /** `met`, `nws`, `open-meteo` or `sample`. */
  readonly source: string
  readonly issuedAt: Instant
  /** The invented week of the demo. */
  readonly sample: boolean
  /** SHA-256 of the canonical JSON of the hours: they are kept once, by this. */
  readonly sha256: string
  /** In order of `at`. */
  readonly hours: readonly Hour[]
}

export interface ForecastParts {
  readonly source: string
  readonly issuedAt: Instant
  readonly sample: boolean
  readonly hours: readonly Hour[]
}

type Measured = Exclude<keyof Hour, 'at' | 'thunder'>

/** What can be: outside it a value is a fault of the source and counts as not given. Ends included. */
const possible = {
  airC: [-90, 60],
  rhPct: [0.1, 100],
  dewPointC: [-100, 45],
  windKmh: [0, 450],
  cloudPct: [0, 100],
  pressureHpa: [300, 1100],
  gustKmh: [0, 500],
  rainMm: [0, 500],
  rainChancePct: [0, 100],
  sunWm2: [0, 1500]
} as const satisfies Record<Measured, readonly [number, number]>

const measured = Object.keys(possible) as readonly Measured[]

/** Hours of unknown worth, in any order → a forecast: sorted, each hour once (the later of two), impossible values null, hashed. */
export function makeForecast(parts: ForecastParts): Forecast {
  const hours = mergeHours([], parts.hours)
  return { source: parts.source, issuedAt: parts.issuedAt, sample: parts.sample, sha256: sha256(forecastBody(hours)), hours }
}

/** The text that a forecast is kept and hashed by: canonical JSON of its hours with ISO instants. */
export function forecastBody(hours: readonly Hour[]): string {
  return canonical(hours.map((hour) => ({ ...hour, at: toIso(hour.at) })))
}

/** Two lists of hours as one, in order. Where both have an hour the newer counts, value by value; its nulls leave the older. */
export function mergeHours(older: readonly Hour[], newer: readonly Hour[]): readonly Hour[] {
  const byInstant = new Map<Instant, Hour>()
  for (const hour of [...older, ...newer]) {
    const known = byInstant.get(hour.at)
    byInstant.set(hour.at, known === undefined ? cleaned(hour) : over(known, cleaned(hour)))
  }
  return [...byInstant.values()].sort((a, b) => a.at - b.at)
}

/** An hour of which nothing is known. */
export function emptyHour(at: Instant): Hour {
  const nothing = { airC: null, rhPct: null, dewPointC: null, windKmh: null, cloudPct: null, pressureHpa: null }
  return { at, ...nothing, gustKmh: null, rainMm: null, rainChancePct: null, thunder: null, sunWm2: null }
}

/** Copies the values the new hour has over those of the old one. */
export function over(known: Hour, hour: Partial<Hour>): Hour {
  const given = Object.entries(hour).filter(([, value]) => value !== null)
  return { ...known, ...Object.fromEntries(given) }
}

function cleaned(hour: Hour): Hour {
  const values: Record<string, number | null> = {}
  for (const name of measured) values[name] = plausible(name, hour[name])
  return { ...emptyHour(hour.at), thunder: hour.thunder, ...values }
}

function plausible(name: Measured, value: number | null): number | null {
  const [low, high] = possible[name]
  if (value === null || !(value >= low && value <= high)) return null
  return round6(value)
}
