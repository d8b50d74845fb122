import type { ClosingFix } from '../../core/fix.js'
import type { BondBreak, DetailKind, DetailStatus, SealMethod } from '../../core/log/closing-data.js'
import type { Outcome } from '../../core/outcome.js'
import type { PhotoProblem } from '../../core/photo.js'
import type { MendWhy } from '../../core/welds/mend.js'
import type { ClosingCheck } from '../answer.js'
import type { ClosingLabelId } from './closing-labels.js'

/** How a void is mended, and what is said on the way. */
export interface MendWords {
  /** Lift, clean, dry, re-heat, cool. */
  readonly weld: string
  patch(why: string, length: string): string
  cutAndPatch(length: string): string
  readonly why: Readonly<Record<MendWhy, string>>
  probeAgain(length: string): string
  /** Repaired without the patch that it wants. */
  wantsPatch(number: number): string
  waitUntil(at: string): string
  /** Head of an answer that would else say that the area may be closed. */
  waitFirst(at: string): string
  /** Of a void that was passed warm: it takes no second pass. */
  probedWarm(at: string): string
  /** Voids in the lap below a strip or patch, by number. */
  under(list: string): string
  dated(at: string): string
  photos(count: number): string
}

export interface BondWords {
  square(substrate: string): string
  readonly none: string
  readonly breaks: Readonly<Record<BondBreak, string>>
  force(amount: string): string
  stress(kiloPascal: string): string
  wanted(amount: string): string
}

export interface SealWords {
  readonly title: string
  edge(amount: string): string
  readonly noEdge: string
  readonly methods: Readonly<Record<SealMethod, string>>
  by(who: string): string
  readonly cut: string
  wet(amount: string): string
  toCut(amount: string): string
  photos(count: number): string
}

/** Voids that stand open by their numbers; the words for all else are those of the posts (`StillWords`). */
export interface OpenWords {
  voids(list: string): string
  reprobe(list: string): string
  /** Nothing does. */
  readonly nothing: string
}

export interface FireWords {
  readonly title: string
  running(until: string, left: string): string
  heat(at: string): string
  readonly noHeat: string
  unsigned(at: string): string
  done(who: string | null): string
  length(amount: string): string
  readonly permit: string
}

export interface DetailWords {
  readonly title: string
  readonly kinds: Readonly<Record<DetailKind, string>>
  readonly statuses: Readonly<Record<DetailStatus | 'unknown', string>>
}

export interface PunchWords {
  readonly title: string
  item(number: number, text: string): string
  readonly states: Readonly<Record<'open' | 'done', string>>
  counts(open: number, done: number): string
  readonly empty: string
}

export interface PhotoWords {
  kept(of: string): string
  /** What the photo shows that is no void and no item of the list. */
  readonly day: string
  punch(number: number): string
  readonly problems: Readonly<Record<PhotoProblem | 'away' | 'not-found' | 'gone', string>>
  notKept(why: string): string
  readonly alone: string
  along(count: number): string
}

/** Everything that is said of mending and closing up. */
export interface ClosingWords {
  readonly mend: MendWords
  readonly bond: BondWords
  readonly seal: SealWords
  readonly open: OpenWords
  readonly fire: FireWords
  readonly detail: DetailWords
  readonly punch: PunchWords
  readonly photo: PhotoWords
  /** A state and since when. */
  since(state: string, at: string): string
  readonly findings: Readonly<Record<ClosingCheck, { readonly name: string; readonly is: Readonly<Record<Outcome, string>> }>>
  readonly fixes: Readonly<Record<ClosingFix, string>>
  readonly toSay: Readonly<Record<Extract<ClosingFix, `state:${string}`>, string>>
  readonly labels: Readonly<Record<ClosingLabelId, string>>
  readonly states: Readonly<Record<'no-heat' | 'running' | 'done' | 'open-punch', string>>
  readonly buttons: Readonly<Record<'seal' | 'fireDone' | 'punch' | 'detail' | 'photo' | 'patched', string>>
}
