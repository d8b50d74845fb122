import { fromIso, type Instant } from '../instant.js'
import type { Entry, Json, JsonObject } from './entry.js'
import { type DayState, emptyDay, stepDay } from './states/day.js'
import { emptyKit, type KitState, stepKit } from './states/kit.js'
import type { Step } from './states/noted.js'
import { type PunchState, stepPunch } from './states/punch.js'
import { emptySite, keepNumbers, type SiteState, stepSite } from './states/site.js'
import { stepVoid, type VoidState } from './states/void.js'
import { emptyWelder, stepWelder, type WelderState } from './states/welder.js'

/** The kinds of subject: each state is the fold of the entries that touch the subject, and of nothing else. */
const kinds = {
  site: (_name: string, before: SiteState | null, step: Step) => stepSite(before ?? emptySite, step),
  day: (_name: string, before: DayState | null, step: Step) => stepDay(before ?? emptyDay, step),
  kit: (name: string, before: KitState | null, step: Step) => stepKit(before ?? emptyKit(name), step),
  welder: (name: string, before: WelderState | null, step: Step) => stepWelder(before ?? emptyWelder(name), step),
  void: (_name: string, before: VoidState | null, step: Step) => stepVoid(before, step),
  punch: (_name: string, before: PunchState | null, step: Step) => stepPunch(before, step)
} as const

export interface States {
  readonly site: SiteState
  readonly day: DayState
  readonly kit: KitState
  readonly welder: WelderState
  readonly void: VoidState
  readonly punch: PunchState
}
export type Kind = keyof States

/** A state as it is kept: with the newest `at` and `seq` in it, so that a later entry can be added without a refold. */
export interface Folded<S = Json> {
  readonly lastAt: Instant
  readonly lastSeq: number
  readonly is: S | null
}

type Logged = Pick<Entry, 'seq' | 'at' | 'type' | 'subject' | 'data'>

/** Folds all entries that touch a subject, in any order; null for none. Entries later than `until` are left out. */
export function refold(subject: string, entries: readonly Logged[], until: Instant = Number.POSITIVE_INFINITY): Folded | null {
  const within = entries.filter((entry) => instantOf(entry) <= until)
  if (within.length === 0) return null
  const { steps, lastAt, lastSeq } = effective(within)
  let state: unknown = null
  for (const step of steps) state = stepOf(subject, state, step)
  if (subject === 'site')
    state = keepNumbers(
      (state as SiteState | null) ?? emptySite,
      within.map((entry) => entry.subject)
    )
  return { lastAt, lastSeq, is: state as Json }
}

/** Adds one entry to a kept state; null when it cannot be added at the end (late, undo, correction): refold instead. */
export function addLast(subject: string, before: Folded | null, entry: Logged): Folded | null {
  if (entry.type === 'undo' || entry.type === 'correction') return null
  const at = instantOf(entry)
  if (before !== null && (at < before.lastAt || entry.seq < before.lastSeq)) return null
  return { lastAt: at, lastSeq: entry.seq, is: stepOf(subject, before?.is ?? null, { ...entry, at }) as Json }
}

/** The entries of a subject as a fold sees them, up to an instant. */
export function stepsOf(entries: readonly Logged[], until: Instant): readonly Step[] {
  return effective(entries.filter((entry) => instantOf(entry) <= until)).steps
}

/** What undid an entry and what corrected it, by its seq: of several corrections the last that was not undone itself. */
export function amendments(entries: readonly Logged[]): {
  /** Seq of the undo. */
  readonly undone: ReadonlyMap<number, number>
  readonly corrected: ReadonlyMap<number, { readonly seq: number; readonly data: JsonObject }>
} {
  const undone = new Map<number, number>()
  const corrected = new Map<number, { readonly seq: number; readonly data: JsonObject }>()
  for (const { type, data, seq } of entries) if (type === 'undo') undone.set(Number(data.target), seq)
  for (const { type, data, seq } of [...entries].sort((a, b) => a.seq - b.seq)) {
    if (type === 'correction' && !undone.has(seq)) corrected.set(Number(data.target), { seq, data: data.data as JsonObject })
  }
  return { undone, corrected }
}

/** Undone entries left out, corrections applied, in order of `at`, then of arrival. */
function effective(entries: readonly Logged[]): { steps: Step[]; lastAt: Instant; lastSeq: number } {
  const { undone, corrected } = amendments(entries)
  let lastAt = Number.NEGATIVE_INFINITY
  let lastSeq = 0
  const steps: Step[] = []
  for (const entry of entries) {
    const at = instantOf(entry)
    if (at > lastAt) lastAt = at
    if (entry.seq > lastSeq) lastSeq = entry.seq
    if (entry.type === 'undo' || entry.type === 'correction' || undone.has(entry.seq)) continue
    steps.push({ seq: entry.seq, at, type: entry.type, subject: entry.subject, data: corrected.get(entry.seq)?.data ?? entry.data })
  }
  steps.sort((a, b) => a.at - b.at || a.seq - b.seq)
  return { steps, lastAt, lastSeq }
}

function stepOf(subject: string, before: unknown, step: Step): unknown {
  const [kind, name] = split(subject)
  return (kinds[kind] as (name: string, before: unknown, step: Step) => unknown)(name, before, step)
}

function split(subject: string): [Kind, string] {
  const colon = subject.indexOf(':')
  const kind = colon < 0 ? subject : subject.slice(0, colon)
  if (!(kind in kinds)) throw new Error(`no such kind of subject: ${subject}`)
  return [kind as Kind, colon < 0 ? '' : subject.slice(colon + 1)]
}

function instantOf(entry: Pick<Entry, 'at'>): Instant {
  const at = fromIso(entry.at)
  if (at === null) throw new Error(`an entry without an instant: ${entry.at}`)
  return at
}
