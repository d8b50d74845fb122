import type { Instant } from '../../core/instant.js'
import { emptyHour, type Hour, over } from '../../core/weather/hour.js'

/** What the answer of a source holds once read. */
export interface Parsed {
  /** Null where the source does not say when it was issued. */
  readonly issuedAt: Instant | null
  readonly hours: readonly Hour[]
}

/** Puts hours together from values that come apart: instants here, sums of the hour there. */
export interface HourSheet {
  readonly put: (at: Instant, values: Partial<Hour>) => void
  readonly hours: () => readonly Hour[]
}

export function hourSheet(): HourSheet {
  const byInstant = new Map<Instant, Hour>()
  return {
    put: (at, values) => byInstant.set(at, over(byInstant.get(at) ?? emptyHour(at), values)),
    hours: () => [...byInstant.values()].sort((a, b) => a.at - b.at)
  }
}

export const hourS = 3600

/**
 * What is known of the rain of one hour within a longer block: a dry block is dry every hour; how a wet one parts is not known.
 */
export function hourlyRainMm(blockMm: number | null, blockHours: number): number | null {
  return blockHours === 1 || blockMm === 0 ? blockMm : null
}
