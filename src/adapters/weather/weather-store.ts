import type { Instant } from '../../core/instant.js'
import type { Forecast, Hour } from '../../core/weather/forecast.js'

/** What was fetched from one source for one cell, as it is kept. */
export interface FetchedForecast {
  readonly fetchedAt: Instant
  readonly issuedAt: Instant
  /** Before this instant the source must not be asked again. */
  readonly expiresAt: Instant
  /** The source's `Last-Modified`, to be sent back word for word; null where it gave none. */
  readonly lastModified: string | null
  readonly forecast: Forecast
}

/** Where fetched weather is kept. A cell is a key from `cellOf`. */
export interface WeatherStore {
  /** The last answer kept of a source for a cell; null when there is none. */
  latest(cell: string, source: string): Promise<FetchedForecast | null>
  /**
   * Keeps an answer as the latest of that cell and source, and its hours among the hours of the cell. An hour kept
   * before is replaced value by value: a null of the new answer leaves what was there (`mergeHours` of the core).
   */
  save(cell: string, source: string, fetched: FetchedForecast): Promise<void>
  /** Hours kept of a cell with from ≤ at ≤ to, in order of `at`; at least the last three days. */
  hours(cell: string, from: Instant, to: Instant): Promise<readonly Hour[]>
}

/** Key of the ≈ 1 km cell of a place: latitude and longitude rounded to 2 decimals. */
export function cellOf(lat: number, lon: number): string {
  return `${twoDecimals(lat)},${twoDecimals(lon)}`
}

function twoDecimals(degrees: number): string {
  const rounded = Math.round(degrees * 100) / 100
  return (rounded === 0 ? 0 : rounded).toFixed(2)
}
