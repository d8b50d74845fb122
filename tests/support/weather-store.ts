import type { FetchedForecast, WeatherStore } from '../../src/adapters/weather/weather-store.js'
import type { Hour } from '../../src/core/weather/forecast.js'
import { mergeHours } from '../../src/core/weather/hours.js'

/** A weather store in memory, for tests. */
export function memoryWeatherStore(): WeatherStore {
  const latest = new Map<string, FetchedForecast>()
  const hours = new Map<string, readonly Hour[]>()
  return {
    latest: async (cell, source) => latest.get(`${cell} ${source}`) ?? null,
    save: async (cell, source, fetched) => {
      latest.set(`${cell} ${source}`, fetched)
      hours.set(cell, mergeHours(hours.get(cell) ?? [], fetched.forecast.hours))
    },
    hours: async (cell, from, to) => (hours.get(cell) ?? []).filter((hour) => hour.at >= from && hour.at <= to)
  }
}
