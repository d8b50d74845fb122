import type { Facts } from './facts.js'
import type { Activity, Finding, Group } from './finding.js'
import type { LimitsSheet } from './limits/sheet.js'
import { rank, worst, type Outcome } from './outcome.js'
import { rules, type RuleId } from './rules/index.js'

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

interface Judge {
  readonly rule: RuleId
  readonly activity: Activity
  readonly group: Group
}

const ids = Object.keys(rules) as RuleId[]
const judges: Readonly<Record<Activity, readonly Judge[]>> = {
  spray: judgesOf('spray'), lay: judgesOf('lay'), weld: judgesOf('weld'), people: judgesOf('people')
}

function judgesOf(activity: Activity): Judge[] {
  return ids.flatMap((rule) => {
    const group = (rules[rule].judges as Partial<Record<Activity, Group>>)[activity]
    return group === undefined ? [] : [{ rule, activity, group }]
  })
}

/** Runs every rule of an activity, and of `people` beside it. Pure: the same facts and sheet give the same decision. */
export function decide(activity: Activity, facts: Facts, sheet: LimitsSheet): Decision {
  const findings: Finding<RuleId>[] = []
  collect(judges[activity], facts, sheet, findings)
  if (activity !== 'people') collect(judges.people, facts, sheet, findings)
  findings.sort(byBinding)
  const conditions = worstOf(findings, 'conditions')
  const checklist = worstOf(findings, 'checklist')
  const people = worstOf(findings, 'people')
  const own = activity === 'people' ? people : worst([conditions, checklist])
  return { activity, outcome: people === 'no-go' ? 'no-go' : own, conditions, checklist, people, findings }
}

function collect(list: readonly Judge[], facts: Facts, sheet: LimitsSheet, into: Finding<RuleId>[]): void {
  for (const { rule, activity, group } of list) {
    const verdict = rules[rule].check(facts, sheet, activity)
    if (verdict !== null) into.push({ rule, activity, group, ...verdict })
  }
}

function worstOf(findings: readonly Finding[], group: Group): Outcome {
  return worst(findings.filter((finding) => finding.group === group).map((finding) => finding.outcome))
}

/** The order of CONTRACT §4, for findings of rules and of commands alike. */
export function byBinding(a: Finding, b: Finding): number {
  if (a.outcome !== b.outcome) return rank[b.outcome] - rank[a.outcome]
  if (a.ease !== b.ease) {
    if (a.ease === null || b.ease === null) return a.ease === null ? -1 : 1
    return a.ease - b.ease
  }
  if (a.rule === b.rule) return 0
  return a.rule < b.rule ? -1 : 1
}
