import { readFileSync } from 'node:fs'

export interface TruthRow {
  readonly id: string
  readonly quantity: string
  readonly source: string
  readonly inputs: Readonly<Record<string, { readonly value: string | number; readonly unit: string }>>
  readonly expected: Readonly<Record<string, { readonly value: string | number; readonly unit: string }>>
  readonly tolerance: Readonly<Record<string, number | null>> | null
}

/** Published check values of a topic under tests/truth, with their sources; `only` narrows to quantities that begin with it. */
export function truth(topic: string, only = ''): readonly TruthRow[] {
  const rows: readonly TruthRow[] = JSON.parse(readFileSync(new URL(`../truth/${topic}.json`, import.meta.url), 'utf8'))
  const found = rows.filter((row) => row.quantity.startsWith(only))
  if (found.length === 0) throw new Error(`no rows of ${topic} begin with ${only}`)
  return found
}
