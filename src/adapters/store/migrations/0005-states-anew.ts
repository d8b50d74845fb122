import type { Kysely } from 'kysely'
import type { Migration } from '../migrate.js'
import { refoldStates } from '../refold-states.js'
import type { Tables } from '../schema.js'

/** States of welders and days hold more than before: metres, trend, how far readings went. */
async function up(db: Kysely<unknown>): Promise<void> {
  await refoldStates(db as Kysely<Tables>)
}

export const statesAnew: Migration = { number: 5, name: 'states-anew', up }
