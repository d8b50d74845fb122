import { type Kysely, sql } from '../kysely.js'
import type { Migration } from '../migrate.js'
import type { Kind } from '../schema.js'

/** Who wants one message for all sites; posts that were given up, to be told of. */
async function up(db: Kysely<unknown>, kind: Kind): Promise<void> {
  await db.schema
    .alterTable('people')
    .addColumn('summary', kind === 'postgres' ? sql`text collate "C"` : sql`text`)
    .execute()
  await sql`create index outbox_given_up on outbox (workspace, due_at, key) where state = 'dead'`.execute(db)
}

export const told: Migration = { number: 6, name: 'told', up }
