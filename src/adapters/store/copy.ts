import { StoreError } from '../../bot/ports.js'
import { sql } from './kysely.js'
import { asStoreError } from './outside.js'
import type { Database, Queries } from './schema.js'
import { allRows, insertRows, isEmpty, type Rows, tableNames } from './tables.js'

/** One moment of a whole store, whoever writes beside it. */
export async function atOneMoment<T>(db: Database, run: (trx: Queries) => Promise<T>): Promise<T> {
  const start = db.read.transaction()
  const isolated = db.kind === 'postgres' ? start.setIsolationLevel('repeatable read').setAccessMode('read only') : start
  return isolated.execute(run)
}

/**
 * Fills an empty store, all or nothing, while nobody else reads or writes it. `rows` may throw to take everything back. How many
 * rows it was. Throws StoreError when something was in it.
 */
export function fill(db: Database, rows: AsyncIterable<Rows>): Promise<number> {
  return outsideStore(() =>
    db.write.transaction().execute(async (trx) => {
      if (db.kind === 'postgres') await lockAll(trx)
      if (!(await isEmpty(trx))) throw new StoreError('the store to fill is not empty: only a new one can be filled')
      await trx.deleteFrom('sites').execute()
      let count = 0
      for await (const some of rows) {
        await insertRows(trx, some)
        count += some.rows.length
      }
      return count
    })
  )
}

/** Copies a whole store into an empty one. Nobody writes to the first meanwhile: what came after the copy would be lost. */
export function copyStore(from: Database, to: Database): Promise<number> {
  // On SQLite every write transaction holds the file from its beginning.
  return outsideStore(() => from.write.transaction().execute((trx) => fill(to, allRows(trx))))
}

async function lockAll(trx: Queries): Promise<void> {
  await sql`lock table ${sql.join(tableNames.map((name) => sql.table(name)))} in access exclusive mode`.execute(trx)
}

async function outsideStore<T>(run: () => Promise<T>): Promise<T> {
  try {
    return await run()
  } catch (error) {
    throw asStoreError(error)
  }
}
