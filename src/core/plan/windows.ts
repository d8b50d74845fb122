import type { Instant } from '../instant.js'
import { type Outcome, outcomes, rank } from '../outcome.js'
import type { RuleId } from '../rules/index.js'
import { type Quarter, quarterS } from './quarters.js'

/** Neighbouring quarters with one outcome. */
export interface Band {
  readonly from: Instant
  readonly to: Instant
  readonly outcome: Outcome
}

/** Time enough to work in. */
export interface Window extends Band {
  /** The rule that stood against it just before, and just after; null at the ends of the day. */
  readonly opens: RuleId | null
  readonly closes: RuleId | null
}

/** The whole day, cut where the outcome changes. */
export function bandsOf(quarters: readonly Quarter[]): readonly Band[] {
  const bands: { from: Instant; to: Instant; outcome: Outcome }[] = []
  for (const { at, outcome } of quarters) {
    const last = bands.at(-1)
    if (last?.outcome === outcome) last.to = at + quarterS
    else bands.push({ from: at, to: at + quarterS, outcome })
  }
  return bands
}

/**
 * Windows of at least so many minutes, in order of time. Where a spell at its worst is long enough, the better part of it
 * that is long enough by itself is a window of its own; what is too short beside it belongs to none.
 */
export function windowsOf(quarters: readonly Quarter[], minMin: number): readonly Window[] {
  const least = Math.max(1, Math.ceil((minMin * 60) / quarterS))
  return spells(quarters, 0, quarters.length, rank.unknown, least)
}

function spells(quarters: readonly Quarter[], from: number, to: number, level: number, least: number): readonly Window[] {
  return runs(quarters, from, to, (order) => order <= level)
    .filter(([start, end]) => end - start >= least)
    .flatMap(([start, end]) => (level === 0 ? [windowAt(quarters, start, end, 0)] : split(quarters, start, end, level, least)))
}

function split(quarters: readonly Quarter[], from: number, to: number, level: number, least: number): readonly Window[] {
  const better = spells(quarters, from, to, level - 1, least)
  const taken = (index: number) => better.some((window) => within(quarters[index], window))
  // A spell with nothing good enough of its own is one window, good quarters and all.
  const rest = runsWhere(from, to, (index) => !taken(index)).filter(([start, end]) => end - start >= least)
  return [...better, ...rest.map(([start, end]) => windowAt(quarters, start, end, level))].sort((a, b) => a.from - b.from)
}

function within(quarter: Quarter | undefined, { from, to }: Band): boolean {
  return quarter !== undefined && quarter.at >= from && quarter.at < to
}

function runs(quarters: readonly Quarter[], from: number, to: number, good: (order: number) => boolean): readonly (readonly [number, number])[] {
  return runsWhere(from, to, (index) => good(rank[(quarters[index] as Quarter).outcome]))
}

function runsWhere(from: number, to: number, good: (index: number) => boolean): readonly (readonly [number, number])[] {
  const found: [number, number][] = []
  for (let index = from; index < to; index += 1) {
    if (!good(index)) continue
    const last = found.at(-1)
    if (last !== undefined && last[1] === index) last[1] = index + 1
    else found.push([index, index + 1])
  }
  return found
}

function windowAt(quarters: readonly Quarter[], start: number, end: number, level: number): Window {
  const first = quarters[start] as Quarter
  const last = quarters[end - 1] as Quarter
  const outcome = outcomes[level] as Outcome
  return {
    from: first.at,
    to: last.at + quarterS,
    outcome,
    opens: against(quarters[start - 1], level),
    closes: against(quarters[end], level)
  }
}

/** What binds in a neighbouring quarter that is worse; null where it is no worse or there is none. */
function against(quarter: Quarter | undefined, level: number): RuleId | null {
  return quarter === undefined || rank[quarter.outcome] <= level ? null : (quarter.binding?.rule ?? null)
}
