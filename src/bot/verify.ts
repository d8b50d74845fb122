import { canonical } from '../core/log/canonical.js'
import { type Anchor, type BadWhy, type ChainHead, type ChainRow, endChain, followChain, startChain } from '../core/log/chain.js'
import type { Entry, Json } from '../core/log/entry.js'
import { addLast, type Folded, refold } from '../core/log/fold.js'
import { touches } from '../core/log/subjects.js'
import type { SiteKey } from '../core/site.js'
import type { SiteView } from './ports.js'

/** What a verification reads: a site at one moment, its rows untrusted. */
export interface Chains {
  allSites(): Promise<readonly SiteKey[]>
  snapshot<T>(key: SiteKey, read: (snapshot: ChainSnapshot) => Promise<T>): Promise<T | null>
}

export interface ChainSnapshot {
  readonly view: SiteView
  rows(afterSeq: number, count: number): Promise<readonly (ChainRow & { readonly seq: number; readonly day: string })[]>
}

export interface SiteVerdict {
  readonly site: string
  readonly entries: number
  readonly head: ChainHead
  readonly firstBad: { readonly seq: number; readonly why: BadWhy | 'state' } | null
}

const slice = 1000

/** Walks the whole chain of a site, then folds every subject again and compares it with the state that is kept. */
export async function verifySite(chains: Chains, key: SiteKey, anchors: readonly Anchor[]): Promise<SiteVerdict | null> {
  return chains.snapshot(key, async ({ view, rows }) => {
    let chain = startChain(key, anchors)
    const folds = new Map<string, Folded | 'refold'>()
    for (let after = 0; ; ) {
      const some = await rows(after, slice)
      chain = followChain(chain, some)
      if (chain.firstBad === null) for (const row of some) foldRow(folds, row)
      if (some.length < slice) break
      after = (some.at(-1) as { seq: number }).seq
    }
    const verdict = endChain(chain, view.head)
    const firstBad = verdict.firstBad ?? (await badState(view, folds))
    return { site: key.site, entries: verdict.entries, head: verdict.head, firstBad }
  })
}

/** Folds a row into each subject it touches; one that cannot be added at the end marks the subject for a refold. */
function foldRow(folds: Map<string, Folded | 'refold'>, row: ChainRow & { readonly day: string }): void {
  const entry = JSON.parse(row.canonical) as Entry
  if (entry.type === 'undo' || entry.type === 'correction') {
    folds.set(entry.subject, 'refold')
    return
  }
  for (const subject of touches(entry, row.day)) {
    const before = folds.get(subject) ?? null
    if (before === 'refold') continue
    folds.set(subject, addLast(subject, before, entry) ?? 'refold')
  }
}

async function badState(view: SiteView, folds: ReadonlyMap<string, Folded | 'refold'>): Promise<{ seq: number; why: 'state' } | null> {
  const kept = new Map((await view.states('')).map((row) => [row.subject, row]))
  for (const subject of [...new Set([...folds.keys(), ...kept.keys()])].sort()) {
    const state = kept.get(subject)?.state ?? null
    const folded = await foldOf(view, subject, folds.get(subject), state)
    if (canonical(folded) !== canonical(state)) return { seq: lastSeq(state) ?? lastSeq(folded) ?? 0, why: 'state' }
  }
  return null
}

/** Undos and corrections act on every subject of their target, so whatever does not fit at once is folded again from its entries. */
async function foldOf(view: SiteView, subject: string, quick: Folded | 'refold' | undefined, state: Json): Promise<Json> {
  if (quick !== undefined && quick !== 'refold' && canonical(quick) === canonical(state)) return quick as unknown as Json
  const entries = (await view.entriesOf(subject)).map(({ entry }) => entry)
  return refold(subject, entries) as unknown as Json
}

function lastSeq(state: Json): number | null {
  return (state as unknown as Folded | null)?.lastSeq ?? null
}
