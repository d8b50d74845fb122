import { createRequire } from 'node:module'
import type * as Module from 'kysely'

/**
 * Kysely in the form for `require`: as an ES module it is 260 files that are each looked for, read and linked by themselves, a tenth
 * of the time from start to the first answer. Types come from the package as they are.
 */
const loaded = createRequire(import.meta.url)('kysely') as typeof Module

export const { CompiledQuery, Kysely, PostgresDialect, SqliteAdapter, SqliteDriver, SqliteIntrospector, SqliteQueryCompiler, sql } = loaded
export type Kysely<Tables> = Module.Kysely<Tables>
export type SqliteAdapter = Module.SqliteAdapter
