import { readFileSync } from 'node:fs'

/** A published or computed check value; `how`: read in a source, computed with what `source` names, or from memory. */
export interface Row {
  readonly id: string
  readonly group: string
  readonly quantity: string
  readonly inputs: Readonly<Record<string, Quantity>>
  readonly expected: Readonly<Record<string, Quantity>>
  readonly tolerance: Readonly<Record<string, number>> | null
  readonly source: string
  readonly how: 'read' | 'computed' | 'memory'
  readonly note?: string
}

export interface Quantity {
  readonly value: number | string
  readonly unit: string
}

export function readTruth(file: string): unknown {
  return JSON.parse(readFileSync(new URL(file, import.meta.url), 'utf8'))
}

/** The rows of a file whose group starts with one of some signs (`1a`, `2c` …), every one of them. */
export function rowsOf(file: string, ...groups: readonly string[]): readonly Row[] {
  const rows = readTruth(file) as readonly Row[]
  return rows.filter((row) => groups.some((group) => row.group.startsWith(group)))
}

export function input(row: Row, name: string): number {
  return numberOf(row.inputs[name], `${row.id} ${name}`)
}

export function expected(row: Row, name: string): number {
  return numberOf(row.expected[name], `${row.id} ${name}`)
}

export function tolerance(row: Row, name: string): number {
  const value = row.tolerance?.[name]
  if (value === undefined) throw new Error(`${row.id} has no tolerance for ${name}`)
  return value
}

function numberOf(quantity: Quantity | undefined, what: string): number {
  if (typeof quantity?.value !== 'number') throw new Error(`${what} is not a number`)
  return quantity.value
}
