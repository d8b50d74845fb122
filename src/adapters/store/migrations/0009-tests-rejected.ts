import type { Kysely } from 'kysely'
import type { Migration } from '../migrate.js'
import { refoldStates } from '../refold-states.js'
import type { Tables } from '../schema.js'

/** States of days hold whether a test spray was rejected and keep a failed square, those of kits hold what was laid with them. */
async function up(db: Kysely<unknown>): Promise<void> {
  await refoldStates(db as Kysely<Tables>)
}

export const testsRejected: Migration = { number: 9, name: 'tests-rejected', up }
