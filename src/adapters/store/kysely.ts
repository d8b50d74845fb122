import type * as Module from 'kysely'
import { load } from './kysely-parts.js'

/** What every start uses, and no more: with the index come fifty files that have to do with other databases and plugins. */
export const { Kysely } = load('kysely')
export const { CompiledQuery } = load('query-compiler/compiled-query')
export const { SqliteAdapter } = load('dialect/sqlite/sqlite-adapter')
export const { SqliteDriver } = load('dialect/sqlite/sqlite-driver')
export const { SqliteIntrospector } = load('dialect/sqlite/sqlite-introspector')
export const { SqliteQueryCompiler } = load('dialect/sqlite/sqlite-query-compiler')
export const { sql } = load('raw-builder/sql')

export type Kysely<Tables> = Module.Kysely<Tables>
export type SqliteAdapter = Module.SqliteAdapter
