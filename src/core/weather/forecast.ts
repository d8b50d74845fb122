import type { Instant } from '../instant.js'

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
