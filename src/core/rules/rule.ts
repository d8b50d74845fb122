import type { Facts } from '../facts.js'
import type { Activity, Group, Verdict } from '../finding.js'
import type { LimitsSheet } from '../limits/sheet.js'

/** A rule sees facts and limits, for one activity, and answers with data. `null`: it has nothing to say here. */
export interface Rule {
  /** Which activities it judges, and in which group the finding stands. */
  readonly judges: Partial<Readonly<Record<Activity, Group>>>
  /** Where the rule comes from: a standard, "common practice, no source" or "from memory". */
  readonly source: string
  check(facts: Facts, sheet: LimitsSheet, activity: Activity): Verdict | null
}
