import type { Kysely, Transaction } from 'kysely'
import { StoreError } from '../../bot/ports.js'
import { sql } from './kysely.js'
import type { Kind, Migrated, Tables } from './schema.js'

/** One step forward. A published one is never changed: what it made is in people's files. */
export interface Migration {
  /** 1, 2, 3 … without a gap. */
  readonly number: number
  readonly name: string
  up(db: Kysely<unknown>, kind: Kind): Promise<void>
}

/** Any number, the same for every Seamhand: who holds it migrates. */
const advisoryLock = 73_264_263

interface Done {
  readonly number: number
}

/**
 * Brings a database to the newest migration: all missing steps in one transaction that holds a lock, so that of several
 * processes starting together one does it and the others find it done. How many were done before and are now. Throws StoreError when the database is newer than this program.
 */
export async function migrate(db: Kysely<Tables>, kind: Kind, migrations: readonly Migration[]): Promise<Migrated> {
  return db.transaction().execute(async (trx) => {
    await lock(trx, kind)
    await sql`create table if not exists migrations (number integer primary key, name text not null)`.execute(trx)
    const done = await sql<Done>`select number from migrations order by number`.execute(trx)
    const version = done.rows.length
    refuseUnknown(done.rows, migrations.length)
    for (const step of migrations.slice(version)) {
      await step.up(trx as unknown as Kysely<unknown>, kind)
      await sql`insert into migrations (number, name) values (${step.number}, ${step.name})`.execute(trx)
    }
    return { before: version, after: migrations.length }
  })
}

/** On SQLite `begin immediate` is the lock. */
async function lock(trx: Transaction<Tables>, kind: Kind): Promise<void> {
  if (kind !== 'postgres') return
  // Another one may take long over a big store.
  await sql`set local lock_timeout = 0`.execute(trx)
  await sql`select pg_advisory_xact_lock(${advisoryLock})`.execute(trx)
}

function refuseUnknown(done: readonly Done[], known: number): void {
  const newest = done.at(-1)?.number ?? 0
  if (newest > known) throw new StoreError(`the store is of a newer Seamhand (migration ${newest}, this one knows ${known}): update the program`)
  if (newest !== done.length) throw new StoreError('the list of migrations of the store has a gap: the store is damaged')
}
