import type { FormulaAnswer, Refusal } from '../../src/core/formulas/index.js'

/** A number from the answer of a formula; fails with what was refused. */
export function numberOf(answer: FormulaAnswer | Refusal, key: string): number {
  if (!answer.ok) throw new Error(`${answer.code} ${answer.word}: ${answer.message}`)
  const value = answer.result[key]
  if (typeof value !== 'number') throw new Error(`${answer.name} gives no number ${key}`)
  return value
}
