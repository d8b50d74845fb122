import { byBinding, findingOf } from '../decide.js'
import type { Finding } from '../finding.js'
import type { Instant } from '../instant.js'
import { weatherJudges } from '../judges.js'
import type { LimitsSheet } from '../limits/sheet.js'
import type { RuleId } from '../rules/index.js'
import { bindsMore, isSetAside, type Moment, quarterS } from './quarters.js'

/** One thing that threatens people in a day: at its worst, and between which instants it is not go. */
export interface Hazard {
  readonly finding: Finding<RuleId>
  readonly from: Instant
  readonly to: Instant
}

/** Every rule of people that is not go at some time of the day, worst first. */
export function hazardsOf(moments: readonly Moment[], sheet: LimitsSheet): readonly Hazard[] {
  const found = new Map<RuleId, Hazard>()
  for (const { facts, of } of moments) {
    const { at, outcome } = of.people
    // Of people every finding decides: where they are go, so is each.
    if (outcome === 'go') continue
    for (const judge of weatherJudges.people) {
      const verdict = judge.check(facts, sheet, judge.activity)
      if (verdict === null || verdict.outcome === 'go' || isSetAside(judge.rule, verdict)) continue
      const before = found.get(judge.rule)
      const worse = before === undefined || bindsMore(verdict, before.finding) ? findingOf(judge, verdict) : before.finding
      found.set(judge.rule, { finding: worse, from: before?.from ?? at, to: at + quarterS })
    }
  }
  return [...found.values()].sort((a, b) => byBinding(a.finding, b.finding))
}
