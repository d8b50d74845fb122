import type { Instant } from '../../core/instant.js'
import type { Forecast, Hour } from '../../core/weather/forecast.js'
import { mergeHours } from '../../core/weather/hours.js'
import { fromText, plain, toText } from './codec.js'
import { slices } from './entries.js'
import { outside } from './outside.js'
import type { Database, ForecastTable, HourTable, Queries } from './schema.js'

/** Weather belongs to no workspace. */
const workspace = '*'

/** Seconds for which hours of a cell are kept: the surface model looks back three days. */
const keptS = 7 * 86_400

/** What was fetched from one source for one cell. */
export interface Fetched {
  readonly fetchedAt: Instant
  readonly issuedAt: Instant
  readonly expiresAt: Instant
  readonly lastModified: string | null
  readonly forecast: Forecast
}

/** Keeps fetched weather: the latest answer of each cell and source, and the hours of each cell. */
export interface WeatherTable {
  latest(cell: string, source: string): Promise<Fetched | null>
  save(cell: string, source: string, fetched: Fetched): Promise<void>
  /** Hours kept of a cell with from ≤ at ≤ to, in order of `at`. */
  hours(cell: string, from: Instant, to: Instant): Promise<readonly Hour[]>
}

export function weatherTable(db: Database): WeatherTable {
  return {
    latest: (cell, source) => outside(() => latest(db.read, cell, source)),
    save: (cell, source, fetched) => outside(() => db.write.transaction().execute((trx) => save(trx, cell, source, fetched))),
    hours: (cell, from, to) => outside(() => hoursOf(db.read, cell, from, to))
  }
}

async function latest(db: Queries, cell: string, source: string): Promise<Fetched | null> {
  const row = await db
    .selectFrom('forecasts')
    .selectAll()
    .where('workspace', '=', workspace)
    .where('cell', '=', cell)
    .where('source', '=', source)
    .executeTakeFirst()
  if (!row) return null
  return {
    fetchedAt: row.fetched_at,
    issuedAt: row.issued_at,
    expiresAt: row.expires_at,
    lastModified: row.last_modified,
    forecast: fromText<Forecast>(row.forecast)
  }
}

/** The forecast's row first: two that save the same cell and source then follow one another. */
async function save(db: Queries, cell: string, source: string, fetched: Fetched): Promise<void> {
  const row = forecastRow(cell, source, fetched)
  await db
    .insertInto('forecasts')
    .values(row)
    .onConflict((conflict) => conflict.columns(['workspace', 'cell', 'source']).doUpdateSet(row))
    .execute()
  await saveHours(db, cell, fetched.forecast.hours)
  await db
    .deleteFrom('hours')
    .where('workspace', '=', workspace)
    .where('cell', '=', cell)
    .where('at', '<', fetched.fetchedAt - keptS)
    .execute()
}

async function saveHours(db: Queries, cell: string, hours: readonly Hour[]): Promise<void> {
  const first = hours[0]
  const last = hours.at(-1)
  if (!first || !last) return
  const merged = mergeHours(await hoursOf(db, cell, first.at, last.at), hours)
  const rows: HourTable[] = merged.map((hour) => ({ workspace, cell, at: hour.at, hour: toText(hour) }))
  for (const slice of slices(rows)) {
    await db
      .insertInto('hours')
      .values(slice)
      .onConflict((conflict) => conflict.columns(['workspace', 'cell', 'at']).doUpdateSet((set) => ({ hour: set.ref('excluded.hour') })))
      .execute()
  }
}

async function hoursOf(db: Queries, cell: string, from: Instant, to: Instant): Promise<readonly Hour[]> {
  const rows = db
    .selectFrom('hours')
    .select('hour')
    .where('workspace', '=', workspace)
    .where('cell', '=', cell)
    .where('at', '>=', from)
    .where('at', '<=', to)
  return (await rows.orderBy('at').execute()).map((row) => fromText<Hour>(row.hour))
}

function forecastRow(cell: string, source: string, { fetchedAt, issuedAt, expiresAt, lastModified, forecast }: Fetched): ForecastTable {
  return {
    workspace,
    cell: plain(cell),
    source: plain(source),
    fetched_at: fetchedAt,
    issued_at: issuedAt,
    expires_at: expiresAt,
    last_modified: lastModified,
    forecast: toText(forecast)
  }
}
