import pg from 'pg'
import { StoreError } from '../../bot/ports.js'
import { CompiledQuery, Kysely } from './kysely.js'
import { PostgresDialect } from './kysely-postgres.js'
import { migrate } from './migrate.js'
import { migrations } from './migrations/index.js'
import { asStoreError } from './outside.js'
import type { Database, Queries, Tables } from './schema.js'

const int8 = 20
const numeric = 1700
const connectMs = 5000
/**
 * Whatever the server's own defaults are: acknowledged is flushed, and a row that was locked is read as it is now. A transaction that
 * somebody left open, or that waits for one, ends: a crew does not wait longer either.
 */
const settings = [
  ['synchronous_commit', 'on'],
  ['default_transaction_isolation', 'read committed'],
  ['lock_timeout', '8s'],
  ['idle_in_transaction_session_timeout', '60s']
] as const

/** Opens the store in a PostgreSQL database and brings it to the newest migration. Throws StoreError; the URL's password is in no sentence. */
export async function openPostgres(url: string): Promise<Database> {
  const pools = [makePool(url, 8), makePool(url, 4)] as const
  const [write, read] = [over(pools[0]), over(pools[1])]
  async function close(): Promise<void> {
    await Promise.all(pools.filter((pool) => !pool.ending).map((pool) => pool.end()))
  }
  try {
    const migrated = await migrate(write, 'postgres', migrations)
    return { kind: 'postgres', write, read, migrated, close }
  } catch (error) {
    await close()
    const told = asStoreError(error)
    throw told instanceof StoreError ? new StoreError(`PostgreSQL: ${told.message}`, { cause: error }) : told
  }
}

function makePool(url: string, max: number): pg.Pool {
  const types = { getTypeParser: parserOf } as pg.CustomTypesConfig
  // Where the other end is gone without a word, the system finds out.
  const pool = new pg.Pool({
    connectionString: url,
    max,
    connectionTimeoutMillis: connectMs,
    types,
    keepAlive: true,
    keepAliveInitialDelayMillis: 10_000
  })
  // A connection that breaks between two queries, in the pool or out of it, would end the process if nobody listened; the next
  // query on it fails, and the pool throws it away.
  pool.on('error', () => undefined)
  pool.on('connect', (client) => client.on('error', () => undefined))
  return pool
}

function over(pool: pg.Pool): Queries {
  const dialect = new PostgresDialect({
    pool,
    onCreateConnection: async (connection) => {
      await connection.executeQuery(
        CompiledQuery.raw(`select ${settings.map(([name, value]) => `set_config('${name}', '${value}', false)`).join(', ')}`)
      )
    }
  })
  return new Kysely<Tables>({ dialect })
}

function parserOf(oid: number, format?: 'text' | 'binary'): unknown {
  return oid === int8 || oid === numeric ? wholeNumber : pg.types.getTypeParser(oid, format as 'text')
}

/** PostgreSQL hands int8, counts and sums as text. What a number cannot hold is refused, not rounded. */
function wholeNumber(text: string): number {
  const value = Number(text)
  if (!Number.isSafeInteger(value)) throw new RangeError(`not a whole number that can be read: ${text}`)
  return value
}
