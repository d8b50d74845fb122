import type { z } from 'zod'
import { type Field, limitKey, limitNames, type SystemName, sectionFields, substrateFields } from '../../core/limits/fields.js'

/** What is wrong with a limits sheet, and where: `limits.kitTemperatureC.min`. For whoever keeps the sheets, in English. */
export interface Problem {
  readonly path: string
  readonly message: string
}

/** One problem for each thing zod found; unknown keys one by one, those of the other system of units told as such. */
export function problemsOf(issues: readonly z.core.$ZodIssue[], system: SystemName): Problem[] {
  return issues.flatMap((issue) => {
    const path = issue.path.map(String)
    if (issue.code !== 'unrecognized_keys') return [{ path: path.join('.'), message: issue.message }]
    return issue.keys.map((key) => ({ path: [...path, key].join('.'), message: unknownKey(key, system) }))
  })
}

function unknownKey(key: string, system: SystemName): string {
  const other = system === 'metric' ? 'us' : 'metric'
  const twin = allKeys.find((each) => each[other] === key && each[system] !== key)
  return twin === undefined ? 'unknown key' : `unknown key: this sheet is in ${system} units, write ${twin[system]}`
}

const allKeys: readonly Readonly<Record<SystemName, string>>[] = [
  ...limitNames.map((name) => ({ metric: limitKey(name, 'metric'), us: limitKey(name, 'us') })),
  ...[...Object.values(sectionFields), substrateFields].flat().flatMap((field: Field) => [field, ...field.rows])
]
