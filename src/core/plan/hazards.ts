import { byBinding } from '../decide.js'
import type { Finding } from '../finding.js'
import type { Instant } from '../instant.js'
import { rank } from '../outcome.js'
import type { RuleId } from '../rules/index.js'
import { type Quarter, quarterS } from './quarters.js'

/** One thing that threatens people in a day: at its worst, and between which instants it is not go. */
export interface Hazard {
  readonly finding: Finding<RuleId>
  readonly from: Instant
  readonly to: Instant
}

/** Every rule of people that is not go at some time of the day, worst first. */
export function hazardsOf(quarters: readonly Quarter[]): readonly Hazard[] {
  const found = new Map<RuleId, Hazard>()
  for (const { at, findings } of quarters) {
    for (const finding of findings) {
      if (rank[finding.outcome] === 0) continue
      const before = found.get(finding.rule)
      const worse = before === undefined || byBinding(finding, before.finding) < 0 ? finding : before.finding
      found.set(finding.rule, { finding: worse, from: before?.from ?? at, to: at + quarterS })
    }
  }
  return [...found.values()].sort((a, b) => byBinding(a.finding, b.finding))
}
