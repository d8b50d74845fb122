import type { Batch, Head, Kept, Moved, Post } from '../../bot/ports.js'
import type { Instant } from '../../core/instant.js'
import type { Json } from '../../core/log/entry.js'
import type { SiteKey } from '../../core/site.js'
import { plain, toText } from './codec.js'
import { chainOn, slices, writeEntries } from './entries.js'
import { fixed, fixedInsert } from './fixed.js'
import { writeKeepsakes } from './keepsakes.js'
import type { OutboxTable, Queries, StateTable } from './schema.js'

const updateHead = fixed<[string, string, number, string], unknown>((db, workspace, site, seq, hash) =>
  db.updateTable('sites').set({ seq, hash }).where('workspace', '=', workspace).where('site', '=', site)
)
const upsertStates = fixedInsert<StateTable>(['workspace', 'site', 'subject', 'state', 'seq'], (db, rows) =>
  db
    .insertInto('states')
    .values(rows)
    .onConflict((conflict) =>
      conflict.columns(['workspace', 'site', 'subject']).doUpdateSet((set) => ({ state: set.ref('excluded.state'), seq: set.ref('excluded.seq') }))
    )
)

const insertPosts = fixedInsert<OutboxTable>(
  ['workspace', 'key', 'site', 'kind', 'channel', 'due_at', 'payload', 'state', 'attempts', 'next_at', 'claimed_until', 'message_ts', 'created_at'],
  (db, rows) =>
    db
      .insertInto('outbox')
      .values(rows)
      .onConflict((conflict) => conflict.doNothing())
)

/** Writes a batch after a head and moves the head; the site's row is locked by this transaction. */
export async function writeBatch(db: Queries, key: SiteKey, head: Head, loggedAt: Instant, batch: Batch<Json>): Promise<readonly Kept[]> {
  const { drafts, moved } = batch
  if (drafts.length === 0 && moved.length > 0) throw new TypeError('states move only with entries')
  const kept = chainOn(key, head, loggedAt, drafts)
  const last = kept.at(-1)
  if (last) {
    await writeEntries(db, key, head, loggedAt, kept, drafts)
    const seq = head.seq + kept.length
    await moveStates(db, key, moved, (subject) => seqOf(subject, batch, head) ?? seq)
    await moveHead(db, key, { seq, hash: last.hash })
  }
  if (batch.channel !== undefined) await moveChannel(db, key, batch.channel)
  await writeKeepsakes(db, key.workspace, batch.keepsakes)
  await queuePosts(db, key.workspace, batch.posts, loggedAt)
  await takeClaims(db, key.workspace, batch.claims ?? [], loggedAt)
  return kept
}

/** The last entry of the batch that touches a subject; null when none does. */
function seqOf(subject: string, { drafts }: Pick<Batch<Json>, 'drafts'>, head: Head): number | null {
  const index = drafts.findLastIndex((draft) => draft.touches.includes(subject))
  return index < 0 ? null : head.seq + 1 + index
}

async function moveHead(db: Queries, { workspace, site }: SiteKey, { seq, hash }: Head): Promise<void> {
  await updateHead(db, workspace, site, seq, hash)
}

async function moveChannel(db: Queries, { workspace, site }: SiteKey, channel: string | null): Promise<void> {
  const set = { channel: channel === null ? null : plain(channel) }
  await db.updateTable('sites').set(set).where('workspace', '=', workspace).where('site', '=', site).execute()
}

async function moveStates(
  db: Queries,
  { workspace, site }: SiteKey,
  moved: readonly Moved[],
  seqOfSubject: (subject: string) => number
): Promise<void> {
  const gone = moved.filter(({ state }) => state === null).map(({ subject }) => subject)
  const rows: StateTable[] = moved
    .filter(({ state }) => state !== null)
    .map(({ subject, state }) => ({ workspace, site, subject: plain(subject), state: toText(state), seq: seqOfSubject(subject) }))
  for (const slice of slices(rows)) await upsertStates(db, slice)
  for (const slice of slices(gone)) {
    await db.deleteFrom('states').where('workspace', '=', workspace).where('site', '=', site).where('subject', 'in', slice).execute()
  }
}

async function queuePosts(db: Queries, workspace: string, posts: readonly Post[], at: Instant): Promise<void> {
  for (const slice of slices(posts.map((post) => postRow(workspace, post, at)))) await insertPosts(db, slice)
}

async function takeClaims(db: Queries, workspace: string, claims: readonly string[], at: Instant): Promise<void> {
  for (const slice of slices(claims.map((key) => ({ workspace, key: plain(key), reply: toText(null), created_at: at })))) {
    await db
      .insertInto('claims')
      .values(slice)
      .onConflict((conflict) => conflict.doNothing())
      .execute()
  }
}

function postRow(workspace: string, { key, site, kind, channel, dueAt, payload }: Post, at: Instant): OutboxTable {
  return {
    workspace,
    key: plain(key),
    site,
    kind,
    channel,
    due_at: dueAt,
    payload: toText(payload),
    state: 'queued',
    attempts: 0,
    next_at: dueAt,
    claimed_until: null,
    message_ts: null,
    created_at: at
  }
}
