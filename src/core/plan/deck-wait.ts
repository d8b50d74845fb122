import type { Finding } from '../finding.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { rank, worst } from '../outcome.js'
import type { RuleId } from '../rules/index.js'
import { relaxingMin } from '../rules/sheet-relaxed.js'
import type { DeckDay } from './deck-day.js'
import type { Moment, Quarter } from './quarters.js'

/**
 * Not before the deck is dry and sheets have relaxed on it; null where it is dry from the start, or nobody knows. A day that is cold
 * at its coldest, which is when decks dry, or whose air nobody knows, takes the longer time.
 */
export function sprayFrom({ dryAt }: DeckDay, coldestC: number | null, sheet: LimitsSheet): Instant | null {
  if (dryAt === null) return null
  return dryAt + relaxingMin(coldestC, sheet) * 60
}

/** The quarters of spraying as the deck lets them be: what is seen of them, and what counts for windows. */
export interface DeckWait {
  /** A deck wet beyond doubt is no-go; until it is dry and the sheets relaxed by the likely course, it is unknown at best. */
  readonly seen: readonly Quarter[]
  /** No window holds any of either. */
  readonly open: readonly Quarter[]
}

/** Judges the deck of each quarter beside its weather. */
export function waitForDeck(all: readonly Moment[], { dryAt }: DeckDay, from: Instant | null): DeckWait {
  const seen = all.map(({ facts, of: { spray } }) => {
    const wet = facts.surfaceWet.value === true
    if (!wet && (from === null || spray.at >= from)) return spray
    const rule = wet || dryAt === null || spray.at < dryAt ? 'substrate-dry' : 'sheet-relaxed'
    return held(spray, found(rule, spray.at, wet ? 'no-go' : 'unknown', facts.surfaceWet.stale))
  })
  return { seen, open: seen.map((quarter, index) => (quarter === all[index]?.of.spray ? quarter : closed(quarter))) }
}

function held(quarter: Quarter, finding: Finding<RuleId>): Quarter {
  const outcome = worst([quarter.outcome, finding.outcome])
  return rank[quarter.outcome] > rank[finding.outcome] ? quarter : { ...quarter, outcome, binding: finding }
}

function closed(quarter: Quarter): Quarter {
  return { ...quarter, outcome: 'no-go' }
}

function found(rule: 'substrate-dry' | 'sheet-relaxed', at: Instant, outcome: 'no-go' | 'unknown', stale: boolean): Finding<RuleId> {
  const nothing = { unit: null, limit: null, margin: null, spread: 0, ease: null } as const
  const fix = rule === 'sheet-relaxed' ? 'wait:relaxed' : outcome === 'no-go' ? 'dry:substrate' : 'state:dry'
  return {
    rule,
    activity: 'spray',
    group: 'checklist',
    outcome,
    value: outcome === 'no-go' ? false : null,
    ...nothing,
    origin: 'model',
    at,
    stale,
    fix
  }
}
