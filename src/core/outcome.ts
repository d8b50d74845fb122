/** From best to worst: the worst finding wins, and missing data is worse than a caution. */
export const outcomes = ['go', 'caution', 'unknown', 'no-go'] as const
export type Outcome = (typeof outcomes)[number]

export const rank: Readonly<Record<Outcome, number>> = { go: 0, caution: 1, unknown: 2, 'no-go': 3 }

/** The worst of some outcomes; `go` for none. */
export function worst(list: readonly Outcome[]): Outcome {
  let result: Outcome = 'go'
  for (const outcome of list) if (rank[outcome] > rank[result]) result = outcome
  return result
}
