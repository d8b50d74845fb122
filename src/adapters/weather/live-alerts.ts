import type { Weather } from '../../bot/ports.js'
import { type Instant, toIso } from '../../core/instant.js'
import type { Alerts } from '../../core/weather/alert.js'
import type { AlertSource, AlertStore, KeptAlerts } from './alert-source.js'
import { askForCell, isDownForAll } from './asked-source.js'
import { cellRounds, type Place } from './cells.js'
import type { LiveOptions } from './live.js'
import { SourceDown } from './source-down.js'
import type { Turns } from './turns.js'
import { cellOf } from './weather-store.js'

export interface LiveAlerts {
  /** Answers from the store alone. Null: no source covers the place. */
  readonly at: NonNullable<Weather['alerts']>
  /** Fetches for many places where what is kept has expired; the cells in which something else is in force now. */
  readonly refreshAll: (places: readonly Place[], now: Instant, enough: () => boolean) => Promise<ReadonlySet<string>>
}

export interface AlertOptions extends Pick<LiveOptions, 'note'> {
  readonly sources: readonly AlertSource[]
  readonly store: AlertStore & Turns
}

type Refreshed = 'changed' | 'same' | 'down'

/** A warning of a thunderstorm is out some 15 min before it comes. Source: common practice, no source. */
const cellS = { had: 300, down: 300 } as const
const atOnce = 4
/** A question asked while a fetch was under way may still use it; one about the past may not use what came later. */
const slackS = 300

/** Alerts from live sources: of each place from the first source that covers it. */
export function liveAlerts(options: AlertOptions): LiveAlerts {
  const { sources, store } = options
  const pausedUntil = new Map<string, Instant>()
  const sourceOf = ({ lat, lon }: Place) => sources.find((source) => source.covers(lat, lon)) ?? null
  const refresh = async (place: Place, now: Instant): Promise<Refreshed> => {
    const source = sourceOf(place)
    return source === null ? 'same' : refreshOne(options, pausedUntil, source, cellOf(place.lat, place.lon), now)
  }
  const round = cellRounds({ what: 'alerts', atOnce, cellS, turns: store, refresh })
  return {
    at: async (place, now) => {
      const source = sourceOf(place)
      return source === null ? null : alertsOf(source.name, await store.alerts(cellOf(place.lat, place.lon), source.name), now)
    },
    refreshAll: async (places, now, enough) => {
      const covered = places.filter((place) => sourceOf(place) !== null)
      const asked = await round(covered, now, enough)
      return new Set([...asked].flatMap(([cell, refreshed]) => (refreshed === 'changed' ? [cell] : [])))
    }
  }
}

/** What is kept, as of an instant: whoever asks about the past is not told what came later. */
function alertsOf(source: string, kept: KeptAlerts | null, now: Instant): Alerts | null {
  if (kept === null || kept.fetchedAt > now + slackS) return { source, asOf: null, all: [] }
  return kept.all === null ? null : { source, asOf: kept.fetchedAt, all: kept.all }
}

async function refreshOne(
  { store, note }: AlertOptions,
  pausedUntil: Map<string, Instant>,
  source: AlertSource,
  cell: string,
  now: Instant
): Promise<Refreshed> {
  const { name } = source
  const known = await store.alerts(cell, name)
  if (known !== null && now < known.expiresAt) return 'same'
  if (now < (pausedUntil.get(name) ?? Number.NEGATIVE_INFINITY)) return 'down'
  const fetched = await askForCell(source, cell, known?.note ?? null, now)
  if (fetched instanceof SourceDown) {
    // Whatever is wrong with one place is asked for again with its next turn.
    if (isDownForAll(fetched)) pausedUntil.set(name, fetched.retryAt)
    note({ source: `${name} alerts`, retryAt: toIso(fetched.retryAt) }, fetched.message)
    return 'down'
  }
  const { expiresAt } = fetched
  if (fetched.kind === 'unchanged') {
    if (known !== null) await store.saveAlerts(cell, name, { ...known, fetchedAt: now, expiresAt })
    return 'same'
  }
  await store.saveAlerts(cell, name, { fetchedAt: now, expiresAt, note: fetched.note, all: fetched.all })
  return JSON.stringify(known?.all ?? []) === JSON.stringify(fetched.all ?? []) ? 'same' : 'changed'
}
