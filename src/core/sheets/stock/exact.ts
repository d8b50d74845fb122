import { leastRolls, type Size } from './sizes.js'

/** How many of each size a roll is cut into. */
export type Pattern = readonly number[]

export interface Searched {
  /** Better than what was known, or null. */
  readonly patterns: readonly Pattern[] | null
  /** Whether every plan was ruled out or seen. */
  readonly complete: boolean
}

interface Search {
  readonly sizes: readonly Size[]
  readonly rollUm: number
  readonly least: number
  readonly seen: Map<string, number>
  steps: number
  best: readonly Pattern[] | null
  bestCount: number
}

/**
 * Branch and bound, a whole roll at a time: the longest piece left is completed in every way that no further piece would fit,
 * the fullest first. Stops when the bound is met, when all is seen, or after so many steps: then it is not complete. A step is a size looked at.
 */
export function searchPatterns(sizes: readonly Size[], rollUm: number, known: number, steps: number): Searched {
  const least = leastRolls(sizes, rollUm)
  const search: Search = { sizes, rollUm, least, seen: new Map(), steps, best: null, bestCount: known }
  fill(
    search,
    sizes.map(({ count }) => count),
    []
  )
  return { patterns: search.best, complete: search.steps > 0 }
}

function fill(search: Search, counts: readonly number[], done: readonly Pattern[]): void {
  const longest = counts.findIndex((count) => count > 0)
  if (longest < 0) {
    search.best = done
    search.bestCount = done.length
    return
  }
  if (!worthwhile(search, counts, done.length)) return
  for (const { pattern } of completions(search, counts, longest)) {
    if (search.steps <= 0 || search.bestCount <= search.least) return
    fill(
      search,
      counts.map((count, index) => count - (pattern[index] as number)),
      [...done, pattern]
    )
  }
}

/** Not when the bound says it cannot win, nor when the same pieces were left before with no more rolls used. */
function worthwhile(search: Search, counts: readonly number[], used: number): boolean {
  search.steps -= search.sizes.length
  const left = search.sizes.map(({ um }, index) => ({ um, count: counts[index] as number }))
  if (used + leastRolls(left, search.rollUm) >= search.bestCount) return false
  const key = counts.join()
  const before = search.seen.get(key)
  if (before !== undefined && before <= used) return false
  search.seen.set(key, used)
  return true
}

interface Completion {
  readonly pattern: Pattern
  readonly leftUm: number
  readonly pieces: number
}

/** Every way to fill a roll with the longest piece in it such that no piece left over would fit too; the fullest first. */
function completions(search: Search, counts: readonly number[], longest: number): readonly Completion[] {
  const { sizes, rollUm } = search
  const found: Completion[] = []
  const pattern = counts.map(() => 0)
  const umOf = (index: number) => sizes[index]?.um as number
  const add = (from: number, leftUm: number, shortestOut: number, pieces: number): void => {
    search.steps -= 1
    if (search.steps <= 0) return
    const index = nextThatFits(search, counts, from, leftUm)
    if (index < 0) {
      if (leftUm < shortestOut) found.push({ pattern: [...pattern], leftUm, pieces })
      return
    }
    const most = Math.min(counts[index] as number, Math.floor(leftUm / umOf(index)))
    for (let take = most; take >= 0; take--) {
      pattern[index] = take
      add(index + 1, leftUm - take * umOf(index), take < (counts[index] as number) ? umOf(index) : shortestOut, pieces + take)
    }
    pattern[index] = 0
  }
  const most = Math.min(counts[longest] as number, Math.floor(rollUm / umOf(longest)))
  for (let take = most; take >= 1; take--) {
    pattern[longest] = take
    add(longest + 1, rollUm - take * umOf(longest), take < (counts[longest] as number) ? umOf(longest) : Number.POSITIVE_INFINITY, take)
  }
  return found.sort((a, b) => a.leftUm - b.leftUm || a.pieces - b.pieces)
}

function nextThatFits({ sizes }: Search, counts: readonly number[], from: number, leftUm: number): number {
  for (let index = from; index < sizes.length; index++) if ((counts[index] as number) > 0 && (sizes[index] as Size).um <= leftUm) return index
  return -1
}
