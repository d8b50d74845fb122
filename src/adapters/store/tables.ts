import { slices } from './entries.js'
import { sql } from './kysely.js'
import type { Queries, Tables } from './schema.js'

export type TableName = keyof Tables
type Keys = { readonly [Name in TableName]: readonly (keyof Tables[Name] & string)[] }

/** Every table with its primary key, in the order in which they are copied; a new one does not compile without its line. */
export const tableKeys: Keys = {
  sites: ['workspace', 'site'],
  entries: ['workspace', 'site', 'seq'],
  touches: ['workspace', 'site', 'subject', 'seq'],
  states: ['workspace', 'site', 'subject'],
  claims: ['workspace', 'key'],
  outbox: ['workspace', 'key'],
  keepsakes: ['workspace', 'sha256'],
  people: ['workspace', 'person'],
  forecasts: ['workspace', 'cell', 'source'],
  hours: ['workspace', 'cell', 'at'],
  installations: ['workspace'],
  alerts: ['workspace', 'cell', 'source'],
  turns: ['workspace', 'what']
}

export const tableNames = Object.keys(tableKeys) as readonly TableName[]

/** A row as it lies in the store: columns are text, whole numbers or null. */
export type Row = Readonly<Record<string, string | number | null>>

/** Some rows of one table. */
export interface Rows {
  readonly table: TableName
  readonly rows: readonly Row[]
}

const rowsAtOnce = 500
/** Photos stand among them. */
const keepsakesAtOnce = 20

/** Every row of every table, in order of key, in slices: the caller's transaction makes them one moment. */
export async function* allRows(db: Queries): AsyncGenerator<Rows> {
  for (const table of tableNames) {
    const most = table === 'keepsakes' ? keepsakesAtOnce : rowsAtOnce
    let last: Row | null = null
    for (;;) {
      const rows = await rowsAfter(db, table, last, most)
      if (rows.length > 0) yield { table, rows }
      if (rows.length < most) break
      last = rows.at(-1) ?? null
    }
  }
}

/** Keys compare by code point on both databases, so the order is the same. */
async function rowsAfter(db: Queries, table: TableName, last: Row | null, most: number): Promise<readonly Row[]> {
  const keys = tableKeys[table]
  const columns = sql.join(keys.map((key) => sql.ref(key)))
  const after = last === null ? sql`` : sql`where (${columns}) > (${sql.join(keys.map((key) => last[key]))})`
  const read = await sql<Row>`select * from ${sql.table(table)} ${after} order by ${columns} limit ${sql.lit(most)}`.execute(db)
  return read.rows
}

/** Writes rows as they are. */
export async function insertRows(db: Queries, { table, rows }: Rows): Promise<void> {
  for (const slice of slices(rows)) {
    await db
      .insertInto(table)
      .values(slice as never)
      .execute()
  }
}

/** Whether a store holds nothing but what a new one holds: the invented site without an entry. */
export async function isEmpty(db: Queries): Promise<boolean> {
  for await (const { table, rows } of allRows(db)) {
    if (table !== 'sites' || rows.some(({ seq, workspace }) => seq !== 0 || workspace !== 'local')) return false
    if (rows.length > 1) return false
  }
  return true
}
