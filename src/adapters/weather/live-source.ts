import type { Instant } from '../../core/instant.js'
import type { Forecast } from '../../core/weather/forecast.js'

export interface FreshForecast {
  readonly kind: 'fresh'
  readonly forecast: Forecast
  /** Before this instant the source must not be asked again. */
  readonly expiresAt: Instant
  /** What the source wants to be handed at the next fetch: its `Last-Modified` word for word, or a note of its own that holds it. */
  readonly lastModified: string | null
  /** The answer as it came. */
  readonly body: string
  /** For the operator, though there is a forecast; null when all is well. */
  readonly note: string | null
}

export type Fetched = FreshForecast | { readonly kind: 'unchanged'; readonly expiresAt: Instant }

/** A source that can be asked over the network. */
export interface LiveSource {
  readonly name: string
  readonly covers: (lat: number, lon: number) => boolean
  /** Throws SourceDown where there is no forecast to be had. `lastModified` is what the answer kept came with. */
  readonly fetch: (lat: number, lon: number, lastModified: string | null, now: Instant) => Promise<Fetched>
}
