import type { KeptSite, Outbox, QueuedPost, Slots } from '../../bot/chat-ports.js'
import type { Instant } from '../../core/instant.js'
import type { Json } from '../../core/log/entry.js'
import { fromText, plain } from './codec.js'
import { slices } from './entries.js'
import { sql } from './kysely.js'
import { notEnded } from './not-ended.js'
import { outside } from './outside.js'
import type { Database, OutboxTable, Queries } from './schema.js'

/** The outbox and the slots over an open database. */
export function outboxTable({ kind, read, write }: Database): Outbox & Slots {
  return {
    take: (now, holdUntil, count, except = []) =>
      outside(() => write.transaction().execute((trx) => takeWithin(trx, kind === 'postgres', now, holdUntil, count, except))),
    renew: (workspace, key, from, until) => outside(() => renew(write, workspace, key, from, until)),
    settle: (workspace, key, change) => outside(() => settle(write, workspace, key, change)),
    post: (workspace, key) => outside(() => onePost(read, workspace, key)),
    skipQueued: (dueBefore) => outside(() => skipQueued(write, dueBefore)),
    keptSites: () => outside(() => keptSites(read)),
    claimed: (workspace, keys) => outside(() => claimed(read, workspace, keys)),
    untold: (dueSince, count) => outside(() => untold(read, dueSince, count)),
    kept: (workspace, claims) => outside(() => keptReplies(read, workspace, claims)),
    lastClaim: (workspace, prefix) => outside(() => lastClaim(read, workspace, prefix))
  }
}

async function takeWithin(
  db: Queries,
  lock: boolean,
  now: Instant,
  holdUntil: Instant,
  count: number,
  except: readonly string[]
): Promise<readonly QueuedPost[]> {
  const turn = readyPosts(db, now, except).limit(count)
  const rows = await (lock ? turn.forUpdate().skipLocked() : turn).execute()
  const taken: QueuedPost[] = []
  for (const row of rows) {
    const held = row.state === 'queued' ? 'sending' : 'unknown'
    await db
      .updateTable('outbox')
      .set({ state: held, claimed_until: holdUntil })
      .where('workspace', '=', row.workspace)
      .where('key', '=', row.key)
      .execute()
    taken.push({ ...queuedPost(row), state: row.state === 'queued' ? 'queued' : 'unknown' })
  }
  return taken
}

/** No hold and no wait is as long as this, s: one that is was set before the clock went back. */
const longestHoldS = 600
const longestWaitS = 6 * 3600

/** Whose turn has come and whom nobody holds; of a channel only the first, so that its order stands. */
function readyPosts(db: Queries, now: Instant, except: readonly string[]) {
  const all = db.selectFrom('outbox').selectAll('outbox').where(notEnded('outbox'))
  return (except.length === 0 ? all : all.where('outbox.workspace', 'not in', except))
    .where((is) =>
      is.or([is('outbox.claimed_until', 'is', null), is('outbox.claimed_until', '<=', now), is('outbox.claimed_until', '>', now + longestHoldS)])
    )
    .where((is) => is.or([is('outbox.state', '=', 'sending'), is('outbox.next_at', '<=', now), is('outbox.next_at', '>', now + longestWaitS)]))
    .where((is) =>
      is.not(
        is.exists(
          is
            .selectFrom('outbox as before')
            .select('before.key')
            .whereRef('before.workspace', '=', 'outbox.workspace')
            .whereRef('before.channel', '=', 'outbox.channel')
            .where(notEnded('before'))
            .where((earlier) =>
              earlier.or([
                earlier('before.due_at', '<', earlier.ref('outbox.due_at')),
                earlier.and([earlier('before.due_at', '=', earlier.ref('outbox.due_at')), earlier('before.key', '<', earlier.ref('outbox.key'))])
              ])
            )
        )
      )
    )
    .orderBy('outbox.due_at')
    .orderBy('outbox.workspace')
    .orderBy('outbox.key')
}

async function renew(db: Queries, workspace: string, key: string, from: Instant, until: Instant): Promise<boolean> {
  const held = db.updateTable('outbox').set({ claimed_until: until }).where('workspace', '=', workspace).where('key', '=', key)
  const renewed = await held.where('claimed_until', '=', from).where(notEnded('outbox')).returning('key').execute()
  return renewed.length > 0
}

async function settle(db: Queries, workspace: string, key: string, change: Parameters<Outbox['settle']>[2]): Promise<void> {
  const { state, nextAt, attempts, messageTs } = change
  await db
    .updateTable('outbox')
    .set({ state, next_at: nextAt, attempts, message_ts: messageTs, claimed_until: null })
    .where('workspace', '=', workspace)
    .where('key', '=', key)
    .where('state', '<>', 'sent')
    .execute()
}

async function skipQueued(db: Queries, dueBefore: Instant): ReturnType<Outbox['skipQueued']> {
  const skipped = await db
    .updateTable('outbox')
    .set({ state: 'skipped' })
    .where('state', '=', 'queued')
    .where('due_at', '<', dueBefore)
    .returning(['workspace', 'key', 'site', 'kind'])
    .execute()
  return skipped.sort((a, b) => (a.key < b.key ? -1 : 1))
}

async function onePost(db: Queries, workspace: string, key: string): Promise<QueuedPost | null> {
  const row = await db.selectFrom('outbox').selectAll().where('workspace', '=', workspace).where('key', '=', key).executeTakeFirst()
  return row === undefined ? null : queuedPost(row)
}

async function keptSites(db: Queries): Promise<readonly KeptSite[]> {
  const rows = await db
    .selectFrom('sites')
    .leftJoin('states', (on) =>
      on.onRef('states.workspace', '=', 'sites.workspace').onRef('states.site', '=', 'sites.site').on('states.subject', '=', 'site')
    )
    .select(['sites.workspace', 'sites.site', 'sites.base', 'sites.seq as last', 'states.state', 'states.seq'])
    .orderBy('sites.workspace')
    .orderBy('sites.site')
    .execute()
  return rows.map(({ workspace, site, base, last, state, seq }) => ({
    key: { workspace, site },
    base: fromText(base),
    state: state === null || seq === null ? null : { subject: 'site', state: fromText(state), seq },
    seq: last
  }))
}

async function claimed(db: Queries, workspace: string, keys: readonly string[]): Promise<ReadonlySet<string>> {
  const found = new Set<string>()
  for (const slice of slices(keys.map(plain))) {
    const rows = await db.selectFrom('claims').select('key').where('workspace', '=', workspace).where('key', 'in', slice).execute()
    for (const { key } of rows) found.add(key)
  }
  return found
}

/** Given up and told to nobody yet: posts to people, which say so themselves, are left out. */
async function untold(db: Queries, dueSince: Instant, count: number): Promise<readonly QueuedPost[]> {
  const dead = db.selectFrom('outbox').selectAll('outbox').where(sql<boolean>`outbox.state = 'dead'`).where('outbox.due_at', '>=', dueSince)
  const claim = sql<string>`'dead/' || outbox.key`
  const rows = dead
    .where('outbox.kind', '<>', 'not-sent')
    .where((is) =>
      is.not(
        is.exists(is.selectFrom('claims').select('claims.key').whereRef('claims.workspace', '=', 'outbox.workspace').where('claims.key', '=', claim))
      )
    )
  return (await rows.orderBy('outbox.workspace').orderBy('outbox.due_at').orderBy('outbox.key').limit(count).execute()).map(queuedPost)
}

async function keptReplies(db: Queries, workspace: string, claims: readonly string[]): Promise<ReadonlyMap<string, Json>> {
  const replies = new Map<string, Json>()
  for (const slice of slices(claims.map(plain))) {
    const rows = await db.selectFrom('claims').select(['key', 'reply']).where('workspace', '=', workspace).where('key', 'in', slice).execute()
    for (const { key, reply } of rows) replies.set(key, fromText(reply))
  }
  return replies
}

/** No text that begins with a prefix sorts after the prefix and the last code point. */
const lastCodePoint = '\u{10FFFF}'

async function lastClaim(db: Queries, workspace: string, prefix: string): Promise<Json | null> {
  const claims = db.selectFrom('claims').select('reply').where('workspace', '=', workspace)
  const within = claims.where('key', '>=', prefix).where('key', '<', prefix + lastCodePoint)
  const row = await within.orderBy('key', 'desc').limit(1).executeTakeFirst()
  return row === undefined ? null : fromText(row.reply)
}

function queuedPost(row: OutboxTable): QueuedPost {
  const { workspace, key, site, kind, channel, state, attempts } = row
  return {
    workspace,
    key,
    site,
    kind,
    channel,
    dueAt: row.due_at,
    payload: fromText(row.payload),
    state,
    attempts,
    messageTs: row.message_ts,
    createdAt: row.created_at
  }
}
