import { join } from 'node:path'
import { makeFolder } from './folder.js'
import { Kysely } from './kysely.js'
import { migrate } from './migrate.js'
import { migrations } from './migrations/index.js'
import { patience } from './patience.js'
import type { Database, Tables } from './schema.js'
import type { DatabaseSync } from './sqlite-api.js'
import { sqliteApi } from './sqlite-api.js'
import { sqliteDialect } from './sqlite-dialect.js'
import { closeFile, inPath, lockServer, setUpReader, setUpWriter } from './sqlite-file.js'

export const databaseFile = 'seamhand.db'
const lockFile = 'server.lock'

export interface SqliteOptions {
  /** Holds a lock that dies with the process: one server per folder. Other processes may write beside it. */
  readonly server: boolean
  /** Milliseconds that a write waits for another process; 5000 when not given. */
  readonly busyMs?: number
}

/**
 * Opens the store in a folder, which is made when it is missing, and brings it to the newest migration. Throws StoreError with a
 * sentence that names the path.
 */
export async function openSqlite(folder: string, { server, busyMs = 5000 }: SqliteOptions): Promise<Database> {
  makeFolder(folder)
  const openFile = await sqliteApi()
  const patiently = patience(busyMs)
  const opened: DatabaseSync[] = []
  let path = join(folder, lockFile)
  function open(): DatabaseSync {
    const database = openFile(path)
    opened.push(database)
    return database
  }
  // The reader closes before the writer; the server's lock goes last.
  function close(): void {
    for (const database of [...opened].reverse()) closeFile(database)
  }
  try {
    if (server) lockServer(open(), folder)
    path = join(folder, databaseFile)
    const writer = open()
    await setUpWriter(writer, path, patiently)
    const reader = open()
    setUpReader(reader)
    const write = new Kysely<Tables>({ dialect: sqliteDialect(writer, { begin: 'begin immediate', patiently }) })
    const migrated = await migrate(write, 'sqlite', migrations)
    const read = new Kysely<Tables>({ dialect: sqliteDialect(reader, { begin: 'begin', patiently }) })
    return { kind: 'sqlite', write, read, migrated, close: async () => close() }
  } catch (error) {
    close()
    throw inPath(path, error)
  }
}
