import { load } from './kysely-parts.js'

export const { PostgresDialect } = load('dialect/postgres/postgres-dialect')
