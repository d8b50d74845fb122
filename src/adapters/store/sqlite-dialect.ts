import type { DatabaseConnection, Dialect, Driver, SqliteDatabase, SqliteStatement } from 'kysely'
import { runsDirectly } from './fixed.js'
import { CompiledQuery, SqliteAdapter, SqliteDriver, SqliteIntrospector, SqliteQueryCompiler } from './kysely.js'
import { isBusy } from './outside.js'
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
  const statements = shim(database)
  function createDriver(): Driver {
    const driver = new SqliteDriver({ database: statements })
    const acquire = driver.acquireConnection.bind(driver)
    async function acquireConnection(): Promise<DatabaseConnection> {
      return patientConnection(await acquire(), patiently)
    }
    async function beginTransaction(connection: DatabaseConnection): Promise<void> {
      await connection.executeQuery(CompiledQuery.raw(begin))
    }
    return Object.assign(driver, { acquireConnection, beginTransaction })
  }
  function createAdapter(): SqliteAdapter {
    const adapter = new SqliteAdapter()
    runsDirectly(adapter, (sql, parameters, inTransaction) => direct(database, statements, sql, parameters, inTransaction))
    return adapter
  }
  return {
    createDriver,
    createAdapter,
    createQueryCompiler: () => new SqliteQueryCompiler(),
    createIntrospector: (db) => new SqliteIntrospector(db)
  }
}

/**
 * A statement takes microseconds here, Kysely's way to it ten times as long. One outside a transaction must not get into the one that
 * is under way on its connection: it goes the long way and waits, as does one that finds the file held.
 */
function direct(
  database: DatabaseSync,
  { prepare }: SqliteDatabase,
  sql: string,
  parameters: readonly unknown[],
  inTransaction: boolean
): readonly unknown[] | null {
  if (database.isTransaction !== inTransaction) return null
  try {
    const prepared = prepare(sql)
    if (prepared.reader) return prepared.all(parameters)
    prepared.run(parameters)
    return []
  } catch (error) {
    if (isBusy(error)) return null
    throw error
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
