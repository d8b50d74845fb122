import type { Weather } from '../../bot/ports.js'
import type { Forecast } from '../../core/weather/forecast.js'
import { sampleForecast } from './sample/index.js'

export { sources } from './sources.js'

/** The same forecast for every place: that of a file, or none at all. */
export function fixedWeather(forecast: Forecast | null): Weather {
  return { at: async () => forecast }
}

/** The invented week for every place. */
export function sampleWeather(): Weather {
  return { at: async (place, now) => sampleForecast(now, place.zone) }
}

/** The invented week for invented places, `weather` for all others. */
export function sampleWhereInvented(weather: Weather): Weather {
  const sample = sampleWeather()
  return {
    at: (place, now) => (place.invented ? sample : weather).at(place, now),
    alerts: async (place, now) => (place.invented ? null : ((await weather.alerts?.(place, now)) ?? null)),
    lacks: (place) => (place.invented ? null : (weather.lacks?.(place) ?? null))
  }
}
