import { sql } from './kysely.js'

/**
 * Posts that are not ended. Written out, not bound: an index over them is used only where the words are its own, and without it the
 * whole outbox is read, which nothing ever leaves.
 */
export const notEnded = (table: string) => sql<boolean>`${sql.ref(`${table}.state`)} in ('queued', 'sending', 'unknown')`
