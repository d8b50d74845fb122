import { type Kysely, sql } from '../kysely.js'
import type { Migration } from '../migrate.js'
import type { Kind } from '../schema.js'

/** Workspaces that installed the app: their tokens, sealed. */
async function up(db: Kysely<unknown>, kind: Kind): Promise<void> {
  const key = kind === 'postgres' ? sql`text collate "C"` : sql`text`
  const whole = kind === 'postgres' ? sql`bigint` : sql`integer`
  const made = db.schema
    .createTable('installations')
    .addColumn('workspace', key, (column) => column.notNull().primaryKey())
    .addColumn('sealed', sql`text`, (column) => column.notNull())
    .addColumn('installed_at', whole, (column) => column.notNull())
  await (kind === 'sqlite' ? made.modifyEnd(sql`strict`) : made).execute()
}

export const installations: Migration = { number: 2, name: 'installations', up }
