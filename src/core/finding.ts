import type { Origin } from './fact.js'
import type { Fix } from './fix.js'
import type { Instant } from './instant.js'
import type { Outcome } from './outcome.js'
import type { Unit } from './units.js'

export const activities = ['spray', 'lay', 'weld', 'people'] as const
export type Activity = (typeof activities)[number]
export type Group = 'conditions' | 'checklist' | 'people'

/** A second measure that the outcome comes from where the first one alone would be better: its value and the bound it passed. */
export interface Because {
  readonly of: 'wbgt'
  readonly value: number
  readonly unit: Unit
  readonly limit: number
  readonly margin: number
  readonly spread: number
  readonly origin: Origin | null
}

/** What a rule says of one activity: data, never a sentence. */
export interface Verdict {
  readonly outcome: Outcome
  readonly value: number | boolean | null
  readonly unit: string | null
  /** The nearer no-go bound, in the unit of the value. */
  readonly limit: number | null
  /** Signed distance to that bound, positive inside. */
  readonly margin: number | null
  readonly spread: number
  readonly origin: Origin | null
  readonly at: Instant | null
  readonly stale: boolean
  readonly fix: Fix | null
  /** Margin ÷ caution band: how much it binds. Null sorts first. */
  readonly ease: number | null
  /** There only where it is so. It follows from the same inputs, so no entry holds it. */
  readonly because?: Because
}

export interface Finding<Id extends string = string> extends Verdict {
  readonly rule: Id
  readonly activity: Activity
  readonly group: Group
}
