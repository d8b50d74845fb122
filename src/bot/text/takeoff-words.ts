import type { TakeoffItem, TakeoffUnit } from '../../core/sheets/takeoff/line.js'

/** Words of a takeoff: its lines, its sums, and the heads of its table. */
export interface TakeoffWords {
  title(site: string): string
  readonly items: Readonly<Record<TakeoffItem, string>>
  readonly units: Readonly<Record<TakeoffUnit, string>>
  readonly heads: Readonly<Record<'item' | 'amount' | 'unit' | 'sum' | 'packs' | 'pack' | 'left', string>>
  zone(name: string): string
  /** Bases: of the roof's edge (0) and of its openings. */
  base(ring: number): string
  waste(percent: string): string
  readonly roundedUp: string
  /** Of fasteners: at most so far apart, the first so far from the corner. */
  spaced(spacing: string, first: string): string
  /** As they are cut from rolls: no plan needs fewer than `least`. */
  asCut(count: string, least: string): string
  /** What everything stood on the roof comes to, against a limit that nobody said. */
  readonly limitNotSaid: string
  readonly engineers: string
  readonly page: readonly [string, string]
  readonly plan: string
  readonly table: string
}
