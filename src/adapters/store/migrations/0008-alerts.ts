import { type Kysely, sql } from '../kysely.js'
import type { Migration } from '../migrate.js'
import type { Kind } from '../schema.js'

/** Alerts of weather services by cell; whose turn it is to ask for a cell. */
async function up(db: Kysely<unknown>, kind: Kind): Promise<void> {
  const key = kind === 'postgres' ? sql`text collate "C"` : sql`text`
  const whole = kind === 'postgres' ? sql`bigint` : sql`integer`
  const alerts = db.schema
    .createTable('alerts')
    .addColumn('workspace', key, (column) => column.notNull())
    .addColumn('cell', key, (column) => column.notNull())
    .addColumn('source', key, (column) => column.notNull())
    .addColumn('fetched_at', whole, (column) => column.notNull())
    .addColumn('expires_at', whole, (column) => column.notNull())
    .addColumn('note', sql`text`)
    .addColumn('alerts', sql`text`, (column) => column.notNull())
    .addPrimaryKeyConstraint('alerts_key', ['workspace', 'cell', 'source'])
  const turns = db.schema
    .createTable('turns')
    .addColumn('workspace', key, (column) => column.notNull())
    .addColumn('what', key, (column) => column.notNull())
    .addColumn('until', whole, (column) => column.notNull())
    .addPrimaryKeyConstraint('turns_key', ['workspace', 'what'])
  for (const made of [alerts, turns]) await (kind === 'sqlite' ? made.modifyEnd(sql`strict`) : made).execute()
}

export const alertsAndTurns: Migration = { number: 8, name: 'alerts', up }
