import { byBinding } from '../decide.js'
import type { Finding } from '../finding.js'
import { rank } from '../outcome.js'
import type { RuleId } from '../rules/index.js'
import type { Quarter } from './quarters.js'
import type { Window } from './windows.js'

/**
 * What binds a day: inside its best windows the finding that is tightest there; without a window, the rule that stops most of
 * the quarters, where it does so worst. The end of daylight binds every day: it is named only where nothing else does.
 */
export function binding(quarters: readonly Quarter[], windows: readonly Window[]): Finding<RuleId> | null {
  const best = Math.min(...windows.map(({ outcome }) => rank[outcome]))
  const inside = quarters.filter(({ at }) => windows.some(({ from, to, outcome }) => rank[outcome] === best && at >= from && at < to))
  return inside.length > 0 ? tightest(inside) : mostOften(quarters)
}

function tightest(quarters: readonly Quarter[]): Finding<RuleId> | null {
  return worstOf(notDaylight(quarters.flatMap(({ binding: found }) => found ?? [])))
}

function mostOften(quarters: readonly Quarter[]): Finding<RuleId> | null {
  const found = notDaylight(quarters.flatMap(({ binding: each }) => each ?? []))
  const counts = new Map<RuleId, number>()
  for (const { rule } of found) counts.set(rule, (counts.get(rule) ?? 0) + 1)
  const most = Math.max(...counts.values())
  return worstOf(found.filter(({ rule }) => counts.get(rule) === most))
}

function notDaylight(findings: readonly Finding<RuleId>[]): readonly Finding<RuleId>[] {
  const others = findings.filter(({ rule }) => rule !== 'daylight')
  return others.length > 0 ? others : findings
}

/** By outcome, then margin ÷ caution band, then rule; the earliest of equals. */
function worstOf(findings: readonly Finding<RuleId>[]): Finding<RuleId> | null {
  return [...findings].sort(byBinding)[0] ?? null
}
