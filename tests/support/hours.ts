import { type Forecast, makeForecast } from '../../src/core/weather/forecast.js'
import { emptyHour, type Hour } from '../../src/core/weather/hour.js'
import { iso } from './instant.js'

/** One hour that ends at an ISO instant, with only the values given. */
export function hour(at: string, values: Partial<Hour> = {}): Hour {
  return { ...emptyHour(iso(at)), ...values }
}

/** A forecast issued at an ISO instant. */
export function forecastOf(issuedAt: string, hours: readonly Hour[]): Forecast {
  return makeForecast({ source: 'met', issuedAt: iso(issuedAt), sample: false, hours })
}
