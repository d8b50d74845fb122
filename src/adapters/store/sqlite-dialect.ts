import type { DatabaseConnection, Dialect, Driver, SqliteDatabase, SqliteStatement } from 'kysely'
import { CompiledQuery, SqliteAdapter, SqliteDriver, SqliteIntrospector, SqliteQueryCompiler } from 'kysely'
import type { Patiently } from './patience.js'
import type { DatabaseSync } from './sqlite-api.js'

type Statement = ReturnType<DatabaseSync['prepare']>
type Bound = null | number | bigint | string | Uint8Array

/** Prepared statements kept per connection; enough for every query there is, at a few lengths of row list each. */
const keptStatements = 200

export interface Beginning {
  /**
   * `begin immediate` for a connection that writes: a deferred transaction that reads first fails at once when another process
   * wrote in between (SQLITE_BUSY_SNAPSHOT), however long it would wait.
   */
  readonly begin: 'begin' | 'begin immediate'
  readonly patiently: Patiently
}

/** Kysely on the `node:sqlite` API, every statement waiting patiently for other processes that write. */
export function sqliteDialect(database: DatabaseSync, { begin, patiently }: Beginning): Dialect {
  function createDriver(): Driver {
    const driver = new SqliteDriver({ database: shim(database) })
    const acquire = driver.acquireConnection.bind(driver)
    async function acquireConnection(): Promise<DatabaseConnection> {
      return patientConnection(await acquire(), patiently)
    }
    async function beginTransaction(connection: DatabaseConnection): Promise<void> {
      await connection.executeQuery(CompiledQuery.raw(begin))
    }
    return Object.assign(driver, { acquireConnection, beginTransaction })
  }
  return {
    createDriver,
    createAdapter: () => new SqliteAdapter(),
    createQueryCompiler: () => new SqliteQueryCompiler(),
    createIntrospector: (db) => new SqliteIntrospector(db)
  }
}

/** A statement that found the file held has done nothing: it may be run again. */
function patientConnection(connection: DatabaseConnection, patiently: Patiently): DatabaseConnection {
  return {
    executeQuery: (query) => patiently(() => connection.executeQuery(query)),
    streamQuery: (query, size) => connection.streamQuery(query, size)
  }
}

function shim(database: DatabaseSync): SqliteDatabase {
  // Kysely prepares for every query. Statements are freed only when the event loop turns, so unkept ones pile up.
  const kept = new Map<string, SqliteStatement>()
  function prepare(sql: string): SqliteStatement {
    const known = kept.get(sql)
    if (known) return known
    if (kept.size >= keptStatements) kept.delete(kept.keys().next().value as string)
    const made = sql === 'rollback' ? rollback(database) : statement(database.prepare(sql), sql)
    kept.set(sql, made)
    return made
  }
  return { prepare, close: () => database.close() }
}

function statement(prepared: Statement, sql: string): SqliteStatement {
  return {
    reader: /^\s*(select|with|pragma)\b|\breturning\b/i.test(sql),
    // Rows come without a prototype; spread them, so that they are like those of PostgreSQL.
    all: (values) => prepared.all(...values.map(bound)).map((row) => ({ ...row })),
    run: (values) => prepared.run(...values.map(bound)),
    iterate: () => {
      throw new TypeError('rows are read in slices, not streamed')
    }
  }
}

/** Out of space and I/O errors have ended the transaction already; a second error would hide the first. */
function rollback(database: DatabaseSync): SqliteStatement {
  function run(): { changes: number; lastInsertRowid: number } {
    if (database.isTransaction) database.exec('rollback')
    return { changes: 0, lastInsertRowid: 0 }
  }
  return { reader: false, all: () => [], run, iterate: () => [][Symbol.iterator]() }
}

/** The driver takes a Date without a word and makes nothing of use of it; PostgreSQL takes a boolean and SQLite does not. */
function bound(value: unknown): Bound {
  if (value === null || typeof value === 'string' || Number.isFinite(value)) return value as Bound
  if (typeof value === 'bigint' || value instanceof Uint8Array) return value
  throw new TypeError(`cannot be bound: ${value === undefined ? 'undefined' : Object.prototype.toString.call(value)}`)
}
