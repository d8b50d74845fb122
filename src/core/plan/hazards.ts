import { byBinding } from '../decide.js'
import type { Finding } from '../finding.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { rank } from '../outcome.js'
import type { RuleId } from '../rules/index.js'
import { findingsAt, type Moment, quarterS } from './quarters.js'

/** One thing that threatens people in a day: at its worst, and between which instants it is not go. */
export interface Hazard {
  readonly finding: Finding<RuleId>
  readonly from: Instant
  readonly to: Instant
}

/** Every rule of people that is not go at some time of the day, worst first. */
export function hazardsOf(moments: readonly Moment[], sheet: LimitsSheet): readonly Hazard[] {
  const found = new Map<RuleId, Hazard>()
  for (const moment of moments) {
    const { at, outcome } = moment.of.people
    // Of people every finding decides: where they are go, so is each.
    if (outcome === 'go') continue
    for (const finding of findingsAt(moment, 'people', sheet)) {
      if (rank[finding.outcome] === 0) continue
      const before = found.get(finding.rule)
      const worse = before === undefined || byBinding(finding, before.finding) < 0 ? finding : before.finding
      found.set(finding.rule, { finding: worse, from: before?.from ?? at, to: at + quarterS })
    }
  }
  return [...found.values()].sort((a, b) => byBinding(a.finding, b.finding))
}
