import type { Instant } from '../../core/instant.js'
import { SourceDown } from './source-down.js'

/** What was answered before still holds. */
export interface Unchanged {
  readonly kind: 'unchanged'
  readonly expiresAt: Instant
}

/** A source that can be asked over the network. */
export interface AskedSource<Fresh> {
  readonly name: string
  readonly covers: (lat: number, lon: number) => boolean
  /**
   * Throws SourceDown where there is nothing to be had. `note` is what the answer kept came with, its `Last-Modified` or more; null:
   * none is kept.
   */
  readonly fetch: (lat: number, lon: number, note: string | null, now: Instant) => Promise<Fresh | Unchanged>
}

/** Asks for the middle of a cell, so that all sites in it share one answer; a source that is down is an answer too. */
export async function askForCell<Fresh>(
  source: AskedSource<Fresh>,
  cell: string,
  note: string | null,
  now: Instant
): Promise<Fresh | Unchanged | SourceDown> {
  const [lat, lon] = cell.split(',').map(Number)
  try {
    return await source.fetch(lat ?? Number.NaN, lon ?? Number.NaN, note, now)
  } catch (error) {
    if (error instanceof SourceDown) return error
    throw error
  }
}

/** Away, or refusing us: that holds for every place. Anything else may be the fault of this one. */
export function isDownForAll({ status }: SourceDown): boolean {
  return status === null || status === 401 || status === 403 || status === 429
}
