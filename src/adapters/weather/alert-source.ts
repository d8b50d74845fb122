import type { Instant } from '../../core/instant.js'
import type { Alert } from '../../core/weather/alert.js'
import type { AskedSource, Unchanged } from './asked-source.js'

export interface FreshAlerts {
  readonly kind: 'fresh'
  /** Null: the service does not cover the place. */
  readonly all: readonly Alert[] | null
  /** Before this instant the source must not be asked again. */
  readonly expiresAt: Instant
  /** What the source wants to be handed at the next fetch; null: nothing. */
  readonly note: string | null
}

export type FetchedAlerts = FreshAlerts | Unchanged

/** A source of alerts. */
export type AlertSource = AskedSource<FreshAlerts>

/** The last answer of a source for a cell, as it is kept. */
export interface KeptAlerts {
  /** When the source last said so. */
  readonly fetchedAt: Instant
  readonly expiresAt: Instant
  readonly note: string | null
  /** Null: the service does not cover the place. */
  readonly all: readonly Alert[] | null
}

/** Where alerts are kept. A cell is a key from `cellOf`. */
export interface AlertStore {
  alerts(cell: string, source: string): Promise<KeptAlerts | null>
  saveAlerts(cell: string, source: string, kept: KeptAlerts): Promise<void>
}
