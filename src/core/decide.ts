import type { Facts } from './facts.js'
import type { Activity, Finding, Group, Verdict } from './finding.js'
import { type Judge, judges, weatherJudges } from './judges.js'
import type { LimitsSheet } from './limits/sheet.js'
import { type Outcome, outcomes, rank } from './outcome.js'
import type { RuleId } from './rules/index.js'

export interface Decision {
  readonly activity: Activity
  /** Worst of conditions and checklist; people `no-go` makes it `no-go`. */
  readonly outcome: Outcome
  readonly conditions: Outcome
  readonly checklist: Outcome
  readonly people: Outcome
  /** By how much they bind: no-go, unknown, caution, go; then margin ÷ caution band, null first; then rule. */
  readonly findings: readonly Finding<RuleId>[]
}

/** Runs every rule of an activity, and of `people` beside it. Pure: the same facts and sheet give the same decision. */
export function decide(activity: Activity, facts: Facts, sheet: LimitsSheet): Decision {
  const ranked: Ranked = [[], [], [], []]
  let conditions = 0
  let checklist = 0
  let people = 0
  for (const { rule, activity: of, group, check } of judges[activity]) {
    const verdict = check(facts, sheet, of)
    if (verdict === null) continue
    const order = rank[verdict.outcome]
    insert(ranked[order] as Finding<RuleId>[], found(rule, of, group, verdict))
    if (group === 'conditions') conditions = Math.max(conditions, order)
    else if (group === 'checklist') checklist = Math.max(checklist, order)
    else people = Math.max(people, order)
  }
  const own = activity === 'people' ? people : Math.max(conditions, checklist)
  return {
    activity,
    outcome: ranking(people === rank['no-go'] ? people : own),
    conditions: ranking(conditions),
    checklist: ranking(checklist),
    people: ranking(people),
    findings: inOrder(ranked)
  }
}

/** The outcome of `decide` alone, in less time: one no-go settles it. Pure. */
export function outcomeOf(activity: Activity, facts: Facts, sheet: LimitsSheet): Outcome {
  let own = 0
  for (const { activity: of, group, check } of judges[activity]) {
    const order = rank[check(facts, sheet, of)?.outcome ?? 'go']
    if (order === rank['no-go']) return 'no-go'
    if (activity === 'people' || group !== 'people') own = Math.max(own, order)
  }
  return ranking(own)
}

/** The findings of conditions and people of an activity, in the order of `decide`, without the checklist. Pure. */
export function weatherFindings(activity: Activity, facts: Facts, sheet: LimitsSheet, only: RuleId | null = null): readonly Finding<RuleId>[] {
  const ranked: Ranked = [[], [], [], []]
  for (const judge of weatherJudges[activity]) {
    if (only !== null && judge.rule !== only) continue
    const verdict = judge.check(facts, sheet, judge.activity)
    if (verdict !== null) insert(ranked[rank[verdict.outcome]] as Finding<RuleId>[], findingOf(judge, verdict))
  }
  return inOrder(ranked)
}

/** A verdict with the rule it is of. */
export function findingOf({ rule, activity, group }: Judge, verdict: Verdict): Finding<RuleId> {
  return found(rule, activity, group, verdict)
}

/** Findings by rank of their outcome. Kept apart while they come in: a plan asks for thousands of decisions, and sorting is what costs. */
type Ranked = [Finding<RuleId>[], Finding<RuleId>[], Finding<RuleId>[], Finding<RuleId>[]]

/** Nearly always most lists are empty, and of one kind only nothing is copied. */
function inOrder([go, caution, unknown, noGo]: Ranked): readonly Finding<RuleId>[] {
  if (noGo.length + unknown.length + caution.length === 0) return go
  return noGo.concat(unknown, caution, go)
}

function ranking(order: number): Outcome {
  return outcomes[order] as Outcome
}

/** Members are written out one by one: a spread here makes the whole decision three times slower. */
function found(rule: RuleId, activity: Activity, group: Group, verdict: Verdict): Finding<RuleId> {
  const { outcome, value, unit, limit, margin, spread, origin, at, stale, fix, ease } = verdict
  const finding = { rule, activity, group, outcome, value, unit, limit, margin, spread, origin, at, stale, fix, ease }
  return verdict.because === undefined ? finding : { ...finding, because: verdict.because }
}

/** Puts a finding where `byBinding` would, given that findings of one outcome come in order of rule. */
function insert(list: Finding<RuleId>[], finding: Finding<RuleId>): void {
  const { ease } = finding
  let i = list.push(finding) - 1
  for (; i > 0; i--) {
    const before = list[i - 1] as Finding<RuleId>
    if (before.ease === null || (ease !== null && before.ease <= ease)) break
    list[i] = before
  }
  list[i] = finding
}

/** The order in which findings bind, for findings of rules and of commands alike. */
export function byBinding(a: Finding, b: Finding): number {
  if (a.outcome !== b.outcome) return rank[b.outcome] - rank[a.outcome]
  if (a.ease !== b.ease) {
    if (a.ease === null || b.ease === null) return a.ease === null ? -1 : 1
    return a.ease - b.ease
  }
  if (a.rule === b.rule) return 0
  return a.rule < b.rule ? -1 : 1
}
