import type { Weather } from '../../bot/ports.js'
import type { Instant } from '../../core/instant.js'
import type { Turns } from './turns.js'
import { cellOf } from './weather-store.js'

/** Of a place nothing matters here but the cell it lies in. */
export type Place = Pick<Parameters<Weather['at']>[0], 'lat' | 'lon'>

/** How cells are asked for, one round after the other. */
export interface Rounds<Refreshed extends string> {
  /** What is asked for: part of the name of a turn. */
  readonly what: string
  /** Cells asked for at once: the services want few connections. */
  readonly atOnce: number
  /** A cell is asked for again after so long, s: sooner where nothing was to be had. */
  readonly cellS: { readonly had: number; readonly down: number }
  readonly turns: Turns
  readonly refresh: (place: Place, now: Instant) => Promise<Refreshed | 'down'>
}

/** Asks for the cells of many places whose turn has come; what became of each that was asked for. */
export type Round<Refreshed extends string> = (
  places: readonly Place[],
  now: Instant,
  enough: () => boolean
) => Promise<ReadonlyMap<string, Refreshed | 'down'>>

/** Asking takes less than this, s: who has not ended his turn by then is gone. */
const turnS = 120

/**
 * Each cell once for all of its places and at most once in its time, a few at a time, those that were left out longest first, until
 * `enough` says so. Of several servers one asks: the others learn from the turn in the store when the next one is.
 */
export function cellRounds<Refreshed extends string>(rounds: Rounds<Refreshed>): Round<Refreshed> {
  const { cellS, atOnce } = rounds
  // Only spares a look at the store.
  const nextAt = new Map<string, Instant>()
  return async (places, now, enough) => {
    const cells = new Map(places.map((place) => [cellOf(place.lat, place.lon), place]))
    for (const cell of nextAt.keys()) if (!cells.has(cell)) nextAt.delete(cell)
    // A turn that lies farther ahead than any wait was set before the clock went back.
    const waits = (at: Instant | undefined) => at !== undefined && at > now && at <= now + Math.max(cellS.had, turnS)
    const due = [...cells].filter(([cell]) => !waits(nextAt.get(cell)))
    due.sort(([a], [b]) => (nextAt.get(a) ?? 0) - (nextAt.get(b) ?? 0))
    const asked = new Map<string, Refreshed | 'down'>()
    async function worker(): Promise<void> {
      for (let one = due.shift(); one !== undefined && !enough(); one = due.shift()) {
        const { next, refreshed } = await inTurn(rounds, one[0], one[1], now)
        nextAt.set(one[0], next)
        if (refreshed !== null) asked.set(one[0], refreshed)
      }
    }
    await Promise.all(Array.from({ length: atOnce }, worker))
    return asked
  }
}

/** When the next turn of a cell is; null: another had this one. */
async function inTurn<Refreshed extends string>(
  { what, cellS, turns, refresh }: Rounds<Refreshed>,
  cell: string,
  place: Place,
  now: Instant
): Promise<{ readonly next: Instant; readonly refreshed: Refreshed | 'down' | null }> {
  const turn = `${what} ${cell}`
  const takenUntil = await turns.take(turn, now, now + turnS)
  if (takenUntil !== null) return { next: takenUntil, refreshed: null }
  const refreshed = await refresh(place, now)
  const next = now + (refreshed === 'down' ? cellS.down : cellS.had)
  await turns.end(turn, next)
  return { next, refreshed }
}
