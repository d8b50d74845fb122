import type { Keepsake } from '../../bot/ports.js'
import { plain } from './codec.js'
import type { Queries } from './schema.js'

/** Keeps each once, for ever. In order of hash, so that two transactions that keep the same ones wait for each other in one direction only. */
export async function writeKeepsakes(db: Queries, workspace: string, keepsakes: readonly Keepsake[]): Promise<void> {
  const rows = keepsakes.map(({ sha256, kind, body }) => ({ workspace, sha256, kind, body: plain(body) }))
  rows.sort((a, b) => (a.sha256 < b.sha256 ? -1 : 1))
  for (const row of rows)
    await db
      .insertInto('keepsakes')
      .values(row)
      .onConflict((conflict) => conflict.doNothing())
      .execute()
}

export async function readKeepsake(db: Queries, workspace: string, sha256: string): Promise<Keepsake | null> {
  const row = await db
    .selectFrom('keepsakes')
    .select(['sha256', 'kind', 'body'])
    .where('workspace', '=', workspace)
    .where('sha256', '=', sha256)
    .executeTakeFirst()
  return row ? (row as Keepsake) : null
}
