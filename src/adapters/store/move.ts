import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { StoreError } from '../../bot/ports.js'
import { copyStore } from './copy.js'
import { openPostgres } from './open-postgres.js'
import { databaseFile, openSqlite } from './open-sqlite.js'
import type { Database } from './schema.js'

/** Copies the SQLite store of a folder, which no server uses, into an empty PostgreSQL: the new one, open. Throws StoreError. */
export async function moveToPostgres(folder: string, url: string): Promise<{ readonly database: Database; readonly rows: number }> {
  if (!existsSync(join(folder, databaseFile))) throw new StoreError(`there is no store in ${folder}`)
  const from = await openSqlite(folder, { server: true })
  try {
    const to = await openPostgres(url)
    try {
      return { database: to, rows: await copyStore(from, to) }
    } catch (error) {
      await to.close()
      throw error
    }
  } finally {
    await from.close()
  }
}
