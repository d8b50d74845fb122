import { type Kysely, sql } from '../kysely.js'
import type { Migration } from '../migrate.js'

/** Thousands of posts at once: the ones not ended in order of time, and of each channel. */
async function up(db: Kysely<unknown>): Promise<void> {
  await sql`create index outbox_in_turn on outbox (due_at, workspace, key) where state in ('queued', 'sending', 'unknown')`.execute(db)
  await sql`create index outbox_of_channel on outbox (workspace, channel, due_at, key) where state in ('queued', 'sending', 'unknown')`.execute(db)
}

export const outboxInTurn: Migration = { number: 4, name: 'outbox', up }
