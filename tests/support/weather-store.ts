import type { AlertStore, KeptAlerts } from '../../src/adapters/weather/alert-source.js'
import type { Turns } from '../../src/adapters/weather/turns.js'
import type { FetchedForecast, WeatherStore } from '../../src/adapters/weather/weather-store.js'
import type { Hour } from '../../src/core/weather/forecast.js'
import { mergeHours } from '../../src/core/weather/hours.js'

/** A weather store in memory, for tests. */
export function memoryWeatherStore(): WeatherStore & AlertStore & Turns {
  const latest = new Map<string, FetchedForecast>()
  const hours = new Map<string, readonly Hour[]>()
  const alerts = new Map<string, KeptAlerts>()
  const turns = new Map<string, number>()
  return {
    latest: async (cell, source) => latest.get(`${cell} ${source}`) ?? null,
    save: async (cell, source, fetched) => {
      latest.set(`${cell} ${source}`, fetched)
      hours.set(cell, mergeHours(hours.get(cell) ?? [], fetched.forecast.hours))
    },
    hours: async (cell, from, to) => (hours.get(cell) ?? []).filter((hour) => hour.at >= from && hour.at <= to),
    alerts: async (cell, source) => alerts.get(`${cell} ${source}`) ?? null,
    saveAlerts: async (cell, source, kept) => void alerts.set(`${cell} ${source}`, kept),
    take: async (what, now, until) => {
      const taken = turns.get(what)
      if (taken !== undefined && taken > now && taken <= now + 6 * 3600) return taken
      turns.set(what, until)
      return null
    },
    end: async (what, until) => void turns.set(what, until)
  }
}
