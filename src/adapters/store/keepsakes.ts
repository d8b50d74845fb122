import type { Keepsake, ToKeep } from '../../bot/ports.js'
import { plain } from './codec.js'
import { fixedList } from './fixed.js'
import type { Queries } from './schema.js'

const kept = fixedList((db, workspace, ...hashes) =>
  db
    .selectFrom('keepsakes')
    .select('sha256')
    .where('workspace', '=', workspace as string)
    .where('sha256', 'in', hashes as readonly string[])
)

/**
 * Keeps each once, for ever; most are kept already, and their bodies are long: they are looked for first. In order of hash, so that
 * two transactions that keep the same ones wait for each other in one direction only.
 */
export async function writeKeepsakes(db: Queries, workspace: string, keepsakes: readonly ToKeep[]): Promise<void> {
  if (keepsakes.length === 0) return
  const rows = await kept(db, workspace, ...keepsakes.map(({ sha256 }) => sha256))
  const known = new Set(rows.map(({ sha256 }) => sha256))
  for (const { sha256, kind, body } of [...keepsakes].sort((a, b) => (a.sha256 < b.sha256 ? -1 : 1))) {
    if (known.has(sha256)) continue
    await db
      .insertInto('keepsakes')
      .values({ workspace, sha256, kind, body: plain(body()) })
      .onConflict((conflict) => conflict.doNothing())
      .execute()
  }
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
