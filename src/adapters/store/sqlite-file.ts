import { StoreError } from '../../bot/ports.js'
import { asStoreError, isBusy } from './outside.js'
import type { Patiently } from './patience.js'
import { blockingMs } from './patience.js'
import type { DatabaseSync } from './sqlite-api.js'

/** Milliseconds a read may block the process: in WAL mode only the recovery after a crash makes one wait. */
const readMs = 5000

/** An exclusive transaction on a file of its own: the operating system lets go of it when the process is gone, however it went. */
export function lockServer(lock: DatabaseSync, folder: string): void {
  try {
    lock.exec('pragma busy_timeout = 0')
    lock.exec('begin exclusive')
  } catch (error) {
    if (isBusy(error)) throw new StoreError(`another Seamhand server uses ${folder}: one server per folder`, { cause: error })
    throw error
  }
}

/** Commits are flushed before they return: WAL with `synchronous=FULL`, https://sqlite.org/pragma.html#pragma_synchronous */
export async function setUpWriter(database: DatabaseSync, path: string, patiently: Patiently): Promise<void> {
  database.exec(`pragma busy_timeout = ${blockingMs}`)
  const tables = await patiently(() => database.prepare("select name from sqlite_schema where type = 'table'").all())
  const foreign = tables.length > 0 && !tables.some((row) => row.name === 'migrations')
  if (foreign) throw new StoreError(`${path} is a database, but not one of Seamhand`)
  // Several processes that open a new file at once: this needs the file alone.
  await patiently(() => database.exec('pragma journal_mode = wal'))
  database.exec('pragma synchronous = full')
  database.exec('pragma foreign_keys = on')
  // In pages. An answer writes some fifteen: by default every sixtieth would wait for the whole journal to be moved into the file.
  database.exec('pragma wal_autocheckpoint = 4000')
  // In KiB: the inner pages of a log of a million entries stay at hand from one question to the next.
  database.exec('pragma cache_size = -16384')
}

export function setUpReader(database: DatabaseSync): void {
  database.exec(`pragma busy_timeout = ${readMs}`)
  database.exec('pragma foreign_keys = on')
  database.exec('pragma query_only = on')
}

/**
 * What stands in the journal goes into the file, so that the file alone is the store. The npm drop-in keeps a connection open
 * until its statements are collected, so the journal would else stay; where another process reads, it stays for that one to do.
 */
export function closeFile(database: DatabaseSync): void {
  if (!database.isOpen) return
  try {
    database.exec('pragma busy_timeout = 0')
    database.exec('pragma wal_checkpoint(truncate)')
  } catch {
    // Nothing is lost: the next one to open the file reads the journal.
  }
  database.close()
}

/** The error as a StoreError whose sentence names the path. */
export function inPath(path: string, error: unknown): unknown {
  const told = asStoreError(error)
  return told instanceof StoreError && !told.message.includes(path) ? new StoreError(`${path}: ${told.message}`, { cause: error }) : told
}
