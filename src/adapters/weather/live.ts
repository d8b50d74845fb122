import type { Weather } from '../../bot/ports.js'
import { type Instant, toIso } from '../../core/instant.js'
import { ageOf } from '../../core/weather/lookup.js'
import { askForCell, isDownForAll } from './asked-source.js'
import { cellRounds, type Place } from './cells.js'
import type { Fetched, LiveSource } from './live-source.js'
import { newest } from './newest.js'
import { SourceDown } from './source-down.js'
import type { Turns } from './turns.js'
import { cellOf, type FetchedForecast, type WeatherStore } from './weather-store.js'

/** `kept`: what is there has not expired. `down`: no source could be asked or answered. */
export type Refreshed = 'fresh' | 'unchanged' | 'kept' | 'down'

export interface LiveWeather extends Weather {
  /** Fetches for a place where what is kept has expired. Never called while somebody waits for a reply. */
  readonly refresh: (place: Place, now: Instant) => Promise<Refreshed>
  /**
   * The same for many places: each cell once for all of its sites and at most once an hour, a few at a time, those that were left
   * out longest first, until `enough` says so. How many cells were asked for.
   */
  readonly refreshAll: (places: readonly Place[], now: Instant, enough: () => boolean) => Promise<number>
}

export interface LiveOptions {
  /** In the order in which they are asked. */
  readonly sources: readonly LiveSource[]
  readonly store: WeatherStore & Turns
  /** For the operator's log: a source that is down, or one that says that it soon will be. */
  readonly note: (what: { readonly source: string; readonly retryAt: string | null }, message: string) => void
}

/**
 * Weather from live sources: `at` answers from the store alone, `refresh` fills it. The next source is asked while those before
 * it are down, do not cover the place, or have nothing that was issued within 3 h.
 */
export function liveWeather(options: LiveOptions): LiveWeather {
  const { sources, store } = options
  // Only spares a source that is down; the answers themselves are kept in the store.
  const pausedUntil = new Map<string, Instant>()
  const refresh = async (place: Place, now: Instant): Promise<Refreshed> => {
    let best: Refreshed = 'down'
    for (const source of sources.filter((one) => one.covers(place.lat, place.lon))) {
      const { refreshed, issuedAt } = await refreshOne(options, pausedUntil, source, cellOf(place.lat, place.lon), now)
      if (worth[refreshed] > worth[best]) best = refreshed
      if (issuedAt !== null && ageOf({ issuedAt }, now) === 'fresh') break
    }
    return best
  }
  const round = cellRounds({ what: 'forecast', atOnce, cellS, turns: store, refresh })
  return {
    at: (place, now) => newest(sources, store, cellOf(place.lat, place.lon), now),
    refresh,
    refreshAll: async (places, now, enough) => (await round(places, now, enough)).size
  }
}

/** Source: common practice, no source. */
const atOnce = 8
const cellS = { had: 3600, down: 300 } as const

const worth: Readonly<Record<Refreshed, number>> = { fresh: 3, unchanged: 2, kept: 1, down: 0 }

/** What became of one source, and when that which it last had to say was issued. */
interface One {
  readonly refreshed: Refreshed
  readonly issuedAt: Instant | null
}

const nothing: One = { refreshed: 'down', issuedAt: null }

async function refreshOne(
  { store, note }: LiveOptions,
  pausedUntil: Map<string, Instant>,
  source: LiveSource,
  cell: string,
  now: Instant
): Promise<One> {
  const { name } = source
  const known = await store.latest(cell, name)
  if (known !== null && now < known.expiresAt) return { refreshed: 'kept', issuedAt: known.issuedAt }
  if ([name, `${name} ${cell}`].some((key) => now < (pausedUntil.get(key) ?? Number.NEGATIVE_INFINITY))) return nothing
  const fetched = await askForCell(source, cell, known?.lastModified ?? null, now)
  if (fetched instanceof SourceDown) {
    const { retryAt, message } = fetched
    pausedUntil.set(isDownForAll(fetched) ? name : `${name} ${cell}`, retryAt)
    note({ source: name, retryAt: toIso(retryAt) }, message)
    return nothing
  }
  if (fetched.kind === 'fresh' && fetched.note !== null) note({ source: name, retryAt: null }, fetched.note)
  return keep(store, cell, name, fetched, known, now)
}

async function keep(store: WeatherStore, cell: string, source: string, fetched: Fetched, known: FetchedForecast | null, now: Instant): Promise<One> {
  if (fetched.kind === 'fresh') {
    const { forecast, expiresAt, lastModified } = fetched
    const { issuedAt } = forecast
    await store.save(cell, source, { fetchedAt: now, issuedAt, expiresAt, lastModified, forecast })
    return { refreshed: 'fresh', issuedAt }
  }
  if (known !== null) await store.save(cell, source, { ...known, expiresAt: fetched.expiresAt })
  return { refreshed: 'unchanged', issuedAt: known?.issuedAt ?? null }
}
