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
  /** At the ground, not reduced to sea level. */
  readonly pressureHpa: number | null
  /** Null where the source has no gust: it is then estimated from the mean wind. */
  readonly gustKmh: number | null
  readonly rainMm: number | null
  readonly rainChancePct: number | null
  readonly thunder: boolean | null
  readonly sunWm2: number | null
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
