import type { SiteKey } from '../site.js'
import { canonical } from './canonical.js'
import type { Draft, Entry } from './entry.js'
import { firstPrev } from './entry.js'
import { sha256 } from './sha256.js'

/** Where an entry stands: what the chain adds to a draft. */
export type Place = Pick<Entry, 'workspace' | 'site' | 'seq' | 'loggedAt' | 'prev'>

export interface Linked {
  readonly entry: Entry
  readonly canonical: string
  readonly hash: string
}

/**
 * Gives a draft its place. The entry is read back from the text that was hashed, when it is asked for, so that what is handed on is
 * what is kept. Members of the draft beyond those of an entry are dropped. Throws when `data` is not JSON. `hashOf` is SHA-256,
 * lower-case hex: who has a faster one brings it.
 */
export function link(draft: Draft, { workspace, site, seq, loggedAt, prev }: Place, hashOf: (text: string) => string = sha256): Linked {
  const { at, author, via, type, subject, data } = draft
  const text = canonical({ v: 1, workspace, site, seq, at, loggedAt, author, via, type, subject, data, prev })
  let entry: Entry | null = null
  return {
    get entry() {
      entry ??= JSON.parse(text) as Entry
      return entry
    },
    canonical: text,
    hash: hashOf(text)
  }
}

/** A row as it lies in the store, nothing of it trusted. */
export interface ChainRow {
  readonly canonical: string
  readonly hash: string
}

export interface ChainHead {
  readonly seq: number
  readonly hash: string
}

export type BadWhy = 'hash' | 'prev' | 'seq' | 'head' | 'anchor'

export interface FirstBad {
  /** The place in the chain at which it first is wrong. */
  readonly seq: number
  readonly why: BadWhy
}

/** A place of the chain, printed where the store cannot reach it: `SITE:SEQ:HASH`. */
export interface Anchor extends ChainHead {
  readonly site: string
}

/** How far a verification has come: carried from one slice of rows to the next. */
export interface ChainSoFar {
  readonly key: SiteKey
  readonly entries: number
  readonly head: ChainHead
  /** Not met yet. */
  readonly anchors: readonly Anchor[]
  readonly firstBad: FirstBad | null
}

export interface ChainVerdict {
  readonly entries: number
  readonly head: ChainHead
  readonly firstBad: FirstBad | null
}

/** Begins a verification; anchors of other sites are left out. */
export function startChain(key: SiteKey, anchors: readonly Anchor[]): ChainSoFar {
  const head = { seq: 0, hash: firstPrev }
  const own = anchors.filter((anchor) => anchor.site === key.site)
  return meet({ key, entries: 0, head, anchors: own, firstBad: null })
}

/** Goes on with the next rows, in order of seq. After the first bad one rows are only counted. */
export function followChain(so: ChainSoFar, rows: readonly ChainRow[]): ChainSoFar {
  return rows.reduce(followRow, so)
}

/** Ends a verification: the rows must end at the head, and every anchor must have been met. */
export function endChain(so: ChainSoFar, expected: ChainHead): ChainVerdict {
  const { entries, head } = so
  return { entries, head, firstBad: so.firstBad ?? badHead(head, expected) ?? badAnchor(so.anchors) }
}

/** Verifies all rows of a site at once: `startChain`, `followChain`, `endChain`. */
export function verifyEntries(key: SiteKey, rows: readonly ChainRow[], expected: ChainHead, anchors: readonly Anchor[]): ChainVerdict {
  return endChain(followChain(startChain(key, anchors), rows), expected)
}

/** `SITE:SEQ:HASH`. */
export function anchorOf(site: string, head: ChainHead): string {
  return `${site}:${head.seq}:${head.hash}`
}

/** Reads `SITE:SEQ:HASH`; null when it is not one. Site names may hold colons: the last two count. */
export function parseAnchor(text: string): Anchor | null {
  const match = /^(.+):(0|[1-9]\d{0,14}):([0-9a-f]{64})$/i.exec(text.trim())
  return match ? { site: match[1] as string, seq: Number(match[2]), hash: (match[3] as string).toLowerCase() } : null
}

function followRow(so: ChainSoFar, row: ChainRow): ChainSoFar {
  const entries = so.entries + 1
  if (so.firstBad !== null) return { ...so, entries }
  const seq = so.head.seq + 1
  const why = wrongWith(row, so.key, seq, so.head.hash)
  if (why !== null) return { ...so, entries, firstBad: { seq, why } }
  return meet({ ...so, entries, head: { seq, hash: row.hash } })
}

function wrongWith(row: ChainRow, { workspace, site }: SiteKey, seq: number, prev: string): BadWhy | null {
  if (sha256(row.canonical) !== row.hash) return 'hash'
  const entry = readEntry(row.canonical)
  if (entry === null || entry.seq !== seq || entry.workspace !== workspace || entry.site !== site) return 'seq'
  return entry.prev === prev ? null : 'prev'
}

function readEntry(text: string): Partial<Entry> | null {
  try {
    const value: unknown = JSON.parse(text)
    return typeof value === 'object' && value !== null ? value : null
  } catch {
    return null
  }
}

/** Takes away the anchors that stand at the head so far; one with another hash is the first bad place. */
function meet(so: ChainSoFar): ChainSoFar {
  const here = so.anchors.filter((anchor) => anchor.seq === so.head.seq)
  if (here.length === 0) return so
  const anchors = so.anchors.filter((anchor) => anchor.seq !== so.head.seq)
  const same = here.every((anchor) => anchor.hash === so.head.hash)
  return { ...so, anchors, firstBad: same ? so.firstBad : { seq: so.head.seq, why: 'anchor' } }
}

function badHead(head: ChainHead, expected: ChainHead): FirstBad | null {
  if (head.seq !== expected.seq) return { seq: Math.min(head.seq, expected.seq) + 1, why: 'head' }
  return head.hash === expected.hash ? null : { seq: head.seq, why: 'head' }
}

function badAnchor(anchors: readonly Anchor[]): FirstBad | null {
  if (anchors.length === 0) return null
  return { seq: Math.min(...anchors.map((anchor) => anchor.seq)), why: 'anchor' }
}
