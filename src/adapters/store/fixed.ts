import type { Compilable, CompiledQuery } from 'kysely'
import type { Queries } from './schema.js'

type Value = string | number | null

/**
 * A query whose text never changes, built and compiled once per database: Kysely takes longer over that than SQLite over the
 * query. `build` gets stand-ins in the place of its values and must hand them on as they are.
 */
export function fixed<Values extends readonly Value[], Row>(
  build: (db: Queries, ...values: Values) => Compilable<Row>
): (db: Queries, ...values: Values) => Promise<readonly Row[]> {
  const compiled = new WeakMap<object, CompiledQuery>()
  return async (db, ...values) => {
    const { adapter } = db.getExecutor()
    const query = compiled.get(adapter) ?? build(db, ...(values.map((_, index) => standIn(index)) as unknown as Values)).compile()
    compiled.set(adapter, query)
    const parameters = query.parameters.map((parameter) => valueAt(parameter, values))
    const { rows } = await db.executeQuery<Row>({ ...query, parameters } as CompiledQuery<Row>)
    return rows
  }
}

/** The same for an insert of one to many rows: one text for each count of rows. */
export function fixedInsert<Row extends object>(
  columns: readonly (keyof Row & string)[],
  build: (db: Queries, rows: readonly Row[]) => Compilable<unknown>
): (db: Queries, rows: readonly Row[]) => Promise<void> {
  const byCount = new Map<number, (db: Queries, ...values: readonly Value[]) => Promise<unknown>>()
  return async (db, rows) => {
    const run = byCount.get(rows.length) ?? fixed((on, ...values) => build(on, unflatten(values, columns)))
    byCount.set(rows.length, run)
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

function valueAt(parameter: unknown, values: readonly Value[]): unknown {
  return typeof parameter === 'string' && parameter.startsWith('\0') ? values[Number(parameter.slice(1))] : parameter
}
