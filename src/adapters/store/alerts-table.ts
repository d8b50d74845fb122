import type { Instant } from '../../core/instant.js'
import type { Alert } from '../../core/weather/alert.js'
import { fromText, plain, toText } from './codec.js'
import { outside } from './outside.js'
import type { AlertTable, Database, Queries } from './schema.js'

/** Weather belongs to no workspace. */
const workspace = '*'

/** The last answer of a source of alerts for one cell. */
export interface Kept {
  readonly fetchedAt: Instant
  readonly expiresAt: Instant
  readonly note: string | null
  /** Null: the source does not cover the place. */
  readonly all: readonly Alert[] | null
}

/** Keeps the alerts of each cell and source, the latest answer alone. */
export interface AlertsTable {
  alerts(cell: string, source: string): Promise<Kept | null>
  saveAlerts(cell: string, source: string, kept: Kept): Promise<void>
}

export function alertsTable({ read, write }: Database): AlertsTable {
  return {
    alerts: (cell, source) => outside(() => latest(read, cell, source)),
    saveAlerts: (cell, source, kept) => outside(() => save(write, cell, source, kept))
  }
}

async function latest(db: Queries, cell: string, source: string): Promise<Kept | null> {
  const of = db.selectFrom('alerts').selectAll().where('workspace', '=', workspace).where('cell', '=', cell)
  const row = await of.where('source', '=', source).executeTakeFirst()
  if (row === undefined) return null
  return { fetchedAt: row.fetched_at, expiresAt: row.expires_at, note: row.note, all: fromText<readonly Alert[] | null>(row.alerts) }
}

async function save(db: Queries, cell: string, source: string, { fetchedAt, expiresAt, note, all }: Kept): Promise<void> {
  const row: AlertTable = {
    workspace,
    cell: plain(cell),
    source: plain(source),
    fetched_at: fetchedAt,
    expires_at: expiresAt,
    note,
    alerts: toText(all)
  }
  await db
    .insertInto('alerts')
    .values(row)
    .onConflict((conflict) => conflict.columns(['workspace', 'cell', 'source']).doUpdateSet(row))
    .execute()
}
