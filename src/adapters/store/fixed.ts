import type { Compilable, CompiledQuery } from 'kysely'
import type { Queries } from './schema.js'

type Value = string | number | null

/** Runs a statement at once, where a database can: null where it must go the long way. */
export type Direct = (sql: string, parameters: readonly unknown[], inTransaction: boolean) => readonly unknown[] | null

const directs = new WeakMap<object, Direct>()

/** A database's adapter, and its short way. */
export function runsDirectly(adapter: object, direct: Direct): void {
  directs.set(adapter, direct)
}

/** A compiled query, and which of the values stands in each place; null for what the query brings along. */
interface Plan {
  readonly query: CompiledQuery
  readonly direct: Direct | null
  readonly places: readonly (number | null)[]
}

/**
 * A query whose text never changes, built and compiled once per database: Kysely takes longer over that than SQLite over the
 * query. `build` gets stand-ins in the place of its values and must hand them on as they are.
 */
export function fixed<Values extends readonly Value[], Row>(
  build: (db: Queries, ...values: Values) => Compilable<Row>
): (db: Queries, ...values: Values) => Promise<readonly Row[]> {
  const plans = new WeakMap<object, Plan>()
  return async (db, ...values) => {
    const { adapter } = db.getExecutor()
    const plan = plans.get(adapter) ?? planOf(build(db, ...(values.map((_, index) => standIn(index)) as unknown as Values)).compile(), adapter)
    plans.set(adapter, plan)
    const { query, direct, places } = plan
    const parameters = places.map((place, index) => (place === null ? query.parameters[index] : values[place]))
    const soon = direct?.(query.sql, parameters, db.isTransaction) ?? null
    return soon === null ? (await db.executeQuery<Row>({ ...query, parameters } as CompiledQuery<Row>)).rows : (soon as readonly Row[])
  }
}

function planOf(query: CompiledQuery, adapter: object): Plan {
  return { query, direct: directs.get(adapter) ?? null, places: query.parameters.map(placeOf) }
}

/** The same for as many values as there are: one text for each count. */
export function fixedList<Row>(
  build: (db: Queries, ...values: readonly Value[]) => Compilable<Row>
): (db: Queries, ...values: readonly Value[]) => Promise<readonly Row[]> {
  const byCount = new Map<number, (db: Queries, ...values: readonly Value[]) => Promise<readonly Row[]>>()
  return (db, ...values) => {
    const run = byCount.get(values.length) ?? fixed(build)
    byCount.set(values.length, run)
    return run(db, ...values)
  }
}

/** The same for an insert of one to many rows: one text for each count of rows. */
export function fixedInsert<Row extends object>(
  columns: readonly (keyof Row & string)[],
  build: (db: Queries, rows: readonly Row[]) => Compilable<unknown>
): (db: Queries, rows: readonly Row[]) => Promise<void> {
  const run = fixedList((on, ...values) => build(on, unflatten(values, columns)))
  return async (db, rows) => {
    await run(db, ...rows.flatMap((row) => columns.map((column) => row[column] as Value)))
  }
}

function unflatten<Row>(values: readonly Value[], columns: readonly string[]): readonly Row[] {
  const count = values.length / columns.length
  return Array.from({ length: count }, (_, row) => {
    return Object.fromEntries(columns.map((column, index) => [column, values[row * columns.length + index]])) as Row
  })
}

function standIn(index: number): string {
  return `\0${index}`
}

function placeOf(parameter: unknown): number | null {
  return typeof parameter === 'string' && parameter.startsWith('\0') ? Number(parameter.slice(1)) : null
}
