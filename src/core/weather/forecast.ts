import type { Instant } from '../instant.js'
import { sha256 } from '../log/sha256.js'
import { forecastBody } from './body.js'
import { mergeHours } from './hours.js'

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

/** Hours of unknown worth, in any order → a forecast: sorted, each hour once (the later of two), impossible values null, hashed. */
export function makeForecast(parts: ForecastParts): Forecast {
  const hours = mergeHours([], parts.hours)
  return { source: parts.source, issuedAt: parts.issuedAt, sample: parts.sample, sha256: sha256(forecastBody(hours)), hours }
}
