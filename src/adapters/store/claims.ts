import type { Instant } from '../../core/instant.js'
import type { Json } from '../../core/log/entry.js'
import { fromText, plain, toText } from './codec.js'
import type { Queries } from './schema.js'

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
  const taken = await db
    .insertInto('claims')
    .values({ workspace, key: plain(key), reply: '', created_at: at })
    .onConflict((conflict) => conflict.doNothing())
    .returning('key')
    .executeTakeFirst()
  if (taken) return null
  const before = await db.selectFrom('claims').select('reply').where('workspace', '=', workspace).where('key', '=', key).executeTakeFirstOrThrow()
  return { reply: fromText<Reply>(before.reply) }
}

/** Keeps the reply of a claim that this transaction took. */
export async function keepReply(db: Queries, workspace: string, key: string, reply: Json): Promise<void> {
  await db
    .updateTable('claims')
    .set({ reply: toText(reply) })
    .where('workspace', '=', workspace)
    .where('key', '=', key)
    .execute()
}
