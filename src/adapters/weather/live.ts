import type { Weather } from '../../bot/ports.js'
import type { Instant } from '../../core/instant.js'
import { type Forecast, makeForecast } from '../../core/weather/forecast.js'
import { mergeHours } from '../../core/weather/hours.js'
import type { Fetched, LiveSource } from './live-source.js'
import { SourceDown } from './source-down.js'
import { cellOf, type FetchedForecast, type WeatherStore } from './weather-store.js'

export type Place = Parameters<Weather['at']>[0]

/** `kept`: what is there has not expired. `down`: no source could be asked or answered. */
export type Refreshed = 'fresh' | 'unchanged' | 'kept' | 'down'

export interface LiveWeather extends Weather {
  /** Fetches for a place where what is kept has expired. Never called while somebody waits for a reply. */
  readonly refresh: (place: Place, now: Instant) => Promise<Refreshed>
}

export interface LiveOptions {
  /** In the order in which they are asked. */
  readonly sources: readonly LiveSource[]
  readonly store: WeatherStore
}

/** How far back kept hours are put before a forecast: the surfaces need last night. */
const historyS = 48 * 3600
/** A question asked while a fetch was under way may still use it; one about the past may not use what came later. */
const slackS = 300

/** Weather from live sources: `at` answers from the store alone, `refresh` fills it. */
export function liveWeather({ sources, store }: LiveOptions): LiveWeather {
  // Only spares a source that is down; the answers themselves are kept in the store.
  const pausedUntil = new Map<string, Instant>()
  return {
    at: (place, now) => newest(sources, store, place, now),
    refresh: async (place, now) => {
      const cell = cellOf(place.lat, place.lon)
      for (const source of sources.filter((one) => one.covers(place.lat, place.lon))) {
        const known = await store.latest(cell, source.name)
        if (known !== null && now < known.expiresAt) return 'kept'
        const key = `${source.name} ${cell}`
        if (now < (pausedUntil.get(key) ?? Number.NEGATIVE_INFINITY)) continue
        const fetched = await ask(source, cell, known, now)
        if (fetched instanceof SourceDown) pausedUntil.set(key, fetched.retryAt)
        else return keep(store, cell, source.name, fetched, known, now)
      }
      return 'down'
    }
  }
}

async function ask(source: LiveSource, cell: string, known: FetchedForecast | null, now: Instant): Promise<Fetched | SourceDown> {
  // The middle of the cell is asked for, so that all sites in it share one answer.
  const [lat, lon] = cell.split(',').map(Number)
  try {
    return await source.fetch(lat ?? Number.NaN, lon ?? Number.NaN, known?.lastModified ?? null, now)
  } catch (error) {
    if (error instanceof SourceDown) return error
    throw error
  }
}

async function keep(
  store: WeatherStore,
  cell: string,
  source: string,
  fetched: Fetched,
  known: FetchedForecast | null,
  now: Instant
): Promise<'fresh' | 'unchanged'> {
  if (fetched.kind === 'fresh') {
    const { forecast, expiresAt, lastModified } = fetched
    await store.save(cell, source, { fetchedAt: now, issuedAt: forecast.issuedAt, expiresAt, lastModified, forecast })
  } else if (known !== null) await store.save(cell, source, { ...known, expiresAt: fetched.expiresAt })
  return fetched.kind
}

/** The answer fetched last: a later source of the order is only ever asked while the ones before it are down. */
async function newest(sources: readonly LiveSource[], store: WeatherStore, place: Place, now: Instant): Promise<Forecast | null> {
  const cell = cellOf(place.lat, place.lon)
  let best: FetchedForecast | null = null
  for (const source of sources) {
    const kept = await store.latest(cell, source.name)
    if (kept !== null && kept.fetchedAt <= now + slackS && (best === null || kept.fetchedAt > best.fetchedAt)) best = kept
  }
  if (best === null) return null
  const { forecast } = best
  const firstAt = forecast.hours[0]?.at ?? now
  const history = await store.hours(cell, firstAt - historyS, firstAt)
  return history.length === 0 ? forecast : makeForecast({ ...forecast, hours: mergeHours(history, forecast.hours) })
}
