/** What an inspector is told of a decision that was taken again. */
export interface ReplayWords {
  same(outcome: string): string
  /** `now`: the outcome now; null: it could not be decided again. */
  other(now: string | null, differs: string): string
  /** What was decided, of what, when. */
  decided(outcome: string, activity: string, at: string): string
  engine(now: string, recorded: string): string
  /** Before the findings: each with its value and its limit. */
  readonly from: string
}
