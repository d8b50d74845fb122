import type { Instant } from '../instant.js'
import { type RoofSeries, wetSpell } from '../roof/series.js'

/** When the deck of a day dries and when dew comes; null: not known, or not so. */
export interface DeckDay {
  /** Of a deck that is wet at the start. */
  readonly dryAt: Instant | null
  /** Of the wetness at the start, else of the next to come; null where it is rain that wets it. */
  readonly dewFromAt: Instant | null
}

/** Rain this long before counts as what made the deck wet, s. */
const rainCountsS = 3600

/** Dry and dew of the open deck as the simulated roof has them, from an instant on; null: no instant. Pure. */
export function deckOfDay(roof: RoofSeries | null, from: Instant | null): DeckDay {
  if (roof === null || from === null) return { dryAt: null, dewFromAt: null }
  const { dewFromAt, dryAt } = wetSpell(roof, 'substrate', from)
  // A spell to come ends on another day: this one begins dry.
  const toCome = dewFromAt !== null && dewFromAt > from
  return { dryAt: toCome ? null : dryAt, dewFromAt: dewFromAt === null || rainedBefore(roof, dewFromAt) ? null : dewFromAt }
}

function rainedBefore({ startAt, stepS, rainMm }: RoofSeries, at: Instant): boolean {
  const row = Math.round((at - startAt) / stepS)
  return rainMm.subarray(Math.max(0, row - rainCountsS / stepS), row).some((mm) => mm > 0)
}
