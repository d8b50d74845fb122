import type { Kysely } from 'kysely'
import type { Migration } from '../migrate.js'

/** A day record reads the entries of one local day of one site, among millions. */
async function up(db: Kysely<unknown>): Promise<void> {
  await db.schema.createIndex('entries_by_day').on('entries').columns(['workspace', 'site', 'day', 'seq']).execute()
}

export const entriesByDay: Migration = { number: 3, name: 'entries-by-day', up }
