import type { Instant } from '../../core/instant.js'
import type { Json } from '../../core/log/entry.js'
import { fromText, plain, toText } from './codec.js'
import { fixed } from './fixed.js'
import type { Queries } from './schema.js'

const insertClaim = fixed<[string, string, number], { key: string }>((db, workspace, key, created_at) =>
  db
    .insertInto('claims')
    .values({ workspace, key, reply: '', created_at })
    .onConflict((conflict) => conflict.doNothing())
    .returning('key')
)
const updateReply = fixed<[string, string, string], unknown>((db, workspace, key, reply) =>
  db.updateTable('claims').set({ reply }).where('workspace', '=', workspace).where('key', '=', key)
)

/**
 * Takes a claim; when it was taken before, gives the reply stored then. Of two that come at once the later waits for the
 * earlier to commit (on SQLite at `begin immediate`, on PostgreSQL at the unique key).
 */
export async function takeClaim<Reply extends Json>(
  db: Queries,
  workspace: string,
  key: string,
  at: Instant
): Promise<{ readonly reply: Reply } | null> {
  const [taken] = await insertClaim(db, workspace, plain(key), at)
  if (taken) return null
  const before = await db.selectFrom('claims').select('reply').where('workspace', '=', workspace).where('key', '=', key).executeTakeFirstOrThrow()
  return { reply: fromText<Reply>(before.reply) }
}

/** Keeps the reply of a claim that this transaction took. */
export async function keepReply(db: Queries, workspace: string, key: string, reply: Json): Promise<void> {
  await updateReply(db, workspace, key, toText(reply))
}

/** What was kept with a claim; null when nobody took it, or nothing was kept with it. */
export async function keptReply(db: Queries, workspace: string, key: string): Promise<Json | null> {
  const row = await db.selectFrom('claims').select('reply').where('workspace', '=', workspace).where('key', '=', key).executeTakeFirst()
  return row === undefined || row.reply === '' ? null : fromText<Json>(row.reply)
}
