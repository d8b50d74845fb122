import type { Instant } from '../../core/instant.js'
import type { Forecast } from '../../core/weather/forecast.js'
import type { AskedSource, Unchanged } from './asked-source.js'

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

export type Fetched = FreshForecast | Unchanged

/** A source of forecasts. */
export type LiveSource = AskedSource<FreshForecast>
