import { hash } from 'node:crypto'
import type { Kept } from '../../bot/ports.js'
import { StoreError } from '../../bot/ports.js'
import type { Instant } from '../../core/instant.js'
import { fromIso, toIso } from '../../core/instant.js'
import type { Linked } from '../../core/log/chain.js'
import { link } from '../../core/log/chain.js'
import type { Draft, Entry } from '../../core/log/entry.js'
import type { SiteKey } from '../../core/site.js'
import { plain } from './codec.js'
import { fixedInsert } from './fixed.js'
import type { EntryTable, Queries, TouchTable } from './schema.js'

export type DayDraft = Draft & { readonly day: string; readonly touches: readonly string[] }
export type EntryRow = Pick<EntryTable, 'site' | 'seq' | 'hash' | 'canonical' | 'batch' | 'day'>

/** An entry as it lies in the store: not parsed, nothing trusted, for verify and export. */
export type RawRow = Pick<EntryTable, 'seq' | 'hash' | 'canonical' | 'day'>

export const keptColumns = ['entries.site', 'entries.seq', 'entries.hash', 'entries.canonical', 'entries.batch', 'entries.day'] as const

/** Rows of one multi-row insert: 12 columns each must stay below SQLite's 32,766 and PostgreSQL's 65,535 parameters. */
const rowsPerInsert = 500

const insertEntries = fixedInsert<EntryTable>(
  ['workspace', 'site', 'seq', 'hash', 'canonical', 'at', 'logged_at', 'author', 'type', 'subject', 'batch', 'day'],
  (db, rows) => db.insertInto('entries').values(rows)
)
const insertTouches = fixedInsert<TouchTable>(['workspace', 'site', 'subject', 'seq'], (db, rows) => db.insertInto('touches').values(rows))

/** Gives drafts their places after a head, in order. */
export function chainOn(
  key: SiteKey,
  head: { readonly seq: number; readonly hash: string },
  loggedAt: Instant,
  drafts: readonly DayDraft[]
): readonly Kept[] {
  const kept: Kept[] = []
  const logged = isoOf(loggedAt)
  let prev = head.hash
  for (const draft of drafts) {
    const linked = linkOne(draft, { ...key, seq: head.seq + 1 + kept.length, loggedAt: logged, prev })
    kept.push(keptAt(linked, head.seq + 1, draft.day))
    prev = linked.hash
  }
  return kept
}

/** The entry stays unread until somebody asks for it. */
function keptAt(linked: Linked, batch: number, day: string): Kept {
  return {
    get entry() {
      return linked.entry
    },
    canonical: linked.canonical,
    hash: linked.hash,
    batch,
    day
  }
}

/** Writes entries after a head, and the subjects they touch. */
export async function writeEntries(
  db: Queries,
  key: SiteKey,
  head: { readonly seq: number },
  loggedAt: Instant,
  kept: readonly Kept[],
  drafts: readonly DayDraft[]
): Promise<void> {
  const all = kept.map((each, index) => rowOf(key, head.seq + 1 + index, loggedAt, each, drafts[index] as DayDraft))
  for (const rows of slices(all)) await insertEntries(db, rows)
  const touches = drafts.flatMap((draft, index) => [...new Set(draft.touches)].map((subject) => touchOf(key, subject, head.seq + 1 + index)))
  for (const rows of slices(touches)) await insertTouches(db, rows)
}

/** All entries of a site after a seq, in order of seq. */
export async function rawRows(db: Queries, { workspace, site }: SiteKey, afterSeq: number, count: number): Promise<readonly RawRow[]> {
  return db
    .selectFrom('entries')
    .select(['seq', 'hash', 'canonical', 'day'])
    .where('workspace', '=', workspace)
    .where('site', '=', site)
    .where('seq', '>', afterSeq)
    .orderBy('seq')
    .limit(count)
    .execute()
}

export async function keptRows(db: Queries, { workspace, site }: SiteKey, afterSeq: number, count: number): Promise<readonly Kept[]> {
  const rows = await db
    .selectFrom('entries')
    .select(keptColumns)
    .where('workspace', '=', workspace)
    .where('site', '=', site)
    .where('seq', '>', afterSeq)
    .orderBy('seq')
    .limit(count)
    .execute()
  return rows.map(keptOf)
}

/** Throws StoreError when the text of the entry is no longer JSON. */
export function keptOf({ site, seq, hash, canonical, batch, day }: EntryRow): Kept {
  return { entry: parse(canonical, site, seq), canonical, hash, batch, day }
}

/** In slices that fit one insert. */
export function slices<T>(rows: readonly T[]): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(rows.length / rowsPerInsert) }, (_, index) => rows.slice(index * rowsPerInsert, (index + 1) * rowsPerInsert))
}

function hashOf(text: string): string {
  return hash('sha256', text, 'hex')
}

function linkOne(draft: DayDraft, place: Parameters<typeof link>[1]): Linked {
  const at = fromIso(draft.at)
  if (at === null || toIso(at) !== draft.at) throw new TypeError(`not an instant as entries hold it: ${draft.at}`)
  plain(draft.author)
  return link(draft, place, hashOf)
}

function rowOf({ workspace, site }: SiteKey, seq: number, loggedAt: Instant, { canonical, hash, batch, day }: Kept, draft: DayDraft): EntryTable {
  const { author, type, subject } = draft
  return {
    workspace,
    site,
    seq,
    hash,
    canonical,
    at: fromIso(draft.at) as number,
    logged_at: loggedAt,
    author,
    type,
    subject: plain(subject),
    batch,
    day
  }
}

function touchOf({ workspace, site }: SiteKey, subject: string, seq: number): TouchTable {
  return { workspace, site, subject: plain(subject), seq }
}

function isoOf(at: Instant): string {
  if (!Number.isSafeInteger(at)) throw new TypeError(`not an instant in whole seconds: ${at}`)
  return toIso(at)
}

function parse(text: string, site: string, seq: number): Entry {
  try {
    return JSON.parse(text) as Entry
  } catch (error) {
    throw new StoreError(`entry ${site}-${seq} is damaged: run verify`, { cause: error })
  }
}
