import type { Instant } from '../../core/instant.js'
import type { Forecast } from '../../core/weather/forecast.js'

export interface FreshForecast {
  readonly kind: 'fresh'
  readonly forecast: Forecast
  /** Before this instant the source must not be asked again. */
  readonly expiresAt: Instant
  readonly lastModified: string | null
  /** The answer as it came. */
  readonly body: string
}

export type Fetched = FreshForecast | { readonly kind: 'unchanged'; readonly expiresAt: Instant }

/** A source that can be asked over the network. */
export interface LiveSource {
  readonly name: string
  readonly covers: (lat: number, lon: number) => boolean
  /** Throws SourceDown where there is no forecast to be had. */
  readonly fetch: (lat: number, lon: number, lastModified: string | null, now: Instant) => Promise<Fetched>
}
