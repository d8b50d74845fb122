import { mkdirSync, statSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { Kysely } from 'kysely'
import { StoreError } from '../../bot/ports.js'
import { migrate } from './migrate.js'
import { migrations } from './migrations/index.js'
import { asStoreError, isBusy } from './outside.js'
import type { Database, Tables } from './schema.js'
import type { DatabaseSync, OpenFile } from './sqlite-api.js'
import { sqliteApi } from './sqlite-api.js'
import { sqliteDialect } from './sqlite-dialect.js'

export const databaseFile = 'seamhand.db'
const lockFile = 'server.lock'
const busyMs = 5000

/**
 * Opens the store in a folder, which is made when it is missing, and brings it to the newest migration. With `server` it holds
 * a lock that dies with the process; a second server is refused, other processes may write beside it. Throws StoreError with a
 * sentence that names the path.
 */
export async function openSqlite(folder: string, { server }: { readonly server: boolean }): Promise<Database> {
  makeFolder(folder)
  const open = await sqliteApi()
  const opened: DatabaseSync[] = []
  try {
    if (server) opened.push(lockServer(open, folder))
    const path = join(folder, databaseFile)
    const writer = named(path, () => connect(open, path, 'wal', opened))
    const reader = named(path, () => connect(open, path, 'query_only', opened))
    const database = assemble(writer, reader, opened)
    await prepare(database, path, writer)
    return database
  } catch (error) {
    closeAll(opened)
    throw error
  }
}

function makeFolder(folder: string): void {
  try {
    makeAll(resolve(folder))
  } catch (error) {
    throw new StoreError(`the data folder ${folder} cannot be made: ${(error as Error).message}`, { cause: error })
  }
}

/** Step by step: Node's own `recursive` never ends on a file system that answers ENOENT for a folder in one that is there (/proc). */
function makeAll(folder: string): void {
  if (statSync(folder, { throwIfNoEntry: false })?.isDirectory()) return
  makeAll(dirname(folder))
  try {
    mkdirSync(folder)
  } catch (error) {
    // Another process that starts at the same time may have made it; a file of that name is no folder.
    if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory()) throw error
  }
}

/** An exclusive transaction on a file of its own: the operating system lets go of it when the process is gone, however it went. */
function lockServer(open: OpenFile, folder: string): DatabaseSync {
  const path = join(folder, lockFile)
  const lock = named(path, () => open(path))
  try {
    lock.exec('pragma busy_timeout = 0')
    lock.exec('begin exclusive')
    return lock
  } catch (error) {
    lock.close()
    if (isBusy(error)) throw new StoreError(`another Seamhand server uses ${folder}: one server per folder`, { cause: error })
    throw inPath(path, error)
  }
}

function connect(open: OpenFile, path: string, role: 'wal' | 'query_only', opened: DatabaseSync[]): DatabaseSync {
  const database = open(path)
  opened.push(database)
  database.exec(`pragma busy_timeout = ${busyMs}`)
  if (role === 'wal') useWal(database)
  database.exec('pragma synchronous = full')
  database.exec('pragma foreign_keys = on')
  if (role === 'query_only') database.exec('pragma query_only = on')
  return database
}

/** Several processes that open a new file at once: the change of journal needs the file alone and does not wait for it. */
function useWal(database: DatabaseSync): void {
  for (let tries = 0; tries < 100; tries += 1) {
    try {
      database.exec('pragma journal_mode = wal')
      return
    } catch (error) {
      if (!isBusy(error) || tries === 99) throw error
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 20)
    }
  }
}

function assemble(writer: DatabaseSync, reader: DatabaseSync, opened: readonly DatabaseSync[]): Database {
  return {
    kind: 'sqlite',
    write: new Kysely<Tables>({ dialect: sqliteDialect(writer, 'begin immediate') }),
    read: new Kysely<Tables>({ dialect: sqliteDialect(reader, 'begin') }),
    close: async () => closeAll(opened)
  }
}

async function prepare(database: Database, path: string, writer: DatabaseSync): Promise<void> {
  const foreign = named(path, () =>
    writer
      .prepare("select name from sqlite_schema where type = 'table'")
      .all()
      .map((row) => row.name)
  )
  if (foreign.length > 0 && !foreign.includes('migrations')) throw new StoreError(`${path} is a database, but not one of Seamhand`)
  try {
    await migrate(database.write, 'sqlite', migrations)
  } catch (error) {
    throw inPath(path, error)
  }
}

/** The reader closes before the writer; the server's lock goes last. */
function closeAll(opened: readonly DatabaseSync[]): void {
  for (const database of [...opened].reverse()) if (database.isOpen) closeOne(database)
}

/**
 * What stands in the journal goes into the file, so that the file alone is the store. The npm drop-in keeps a connection open
 * until its statements are collected, so the journal would else stay; where another process reads, it stays for that one to do.
 */
function closeOne(database: DatabaseSync): void {
  try {
    database.exec('pragma busy_timeout = 0')
    database.exec('pragma wal_checkpoint(truncate)')
  } catch {
    // Nothing is lost: the next one to open the file reads the journal.
  }
  database.close()
}

function named<T>(path: string, run: () => T): T {
  try {
    return run()
  } catch (error) {
    throw inPath(path, error)
  }
}

function inPath(path: string, error: unknown): unknown {
  const told = asStoreError(error)
  return told instanceof StoreError && !told.message.includes(path) ? new StoreError(`${path}: ${told.message}`, { cause: error }) : told
}
