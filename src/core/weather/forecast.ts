import type { Instant } from '../instant.js'
import { sha256 } from '../log/sha256.js'
import { forecastBody } from './body.js'
import type { Hour } from './hour.js'
import { mergeHours } from './hours.js'

export type { Hour } from './hour.js'

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
