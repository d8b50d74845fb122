import type { Kysely } from 'kysely'
import type { Migration } from '../migrate.js'
import { refoldStates } from '../refold-states.js'
import type { Tables } from '../schema.js'

/** States of kits hold when they were emptied. */
async function up(db: Kysely<unknown>): Promise<void> {
  await refoldStates(db as Kysely<Tables>)
}

export const kitsEmptied: Migration = { number: 7, name: 'kits-emptied', up }
