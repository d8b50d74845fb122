import { toIso } from '../instant.js'
import { OutOfRange } from '../physics/range.js'
import { round6 } from '../units.js'
import { type Formula, type Refusal, type Result, refuse, type Values } from './formula.js'
import { read } from './read.js'

export type Shown = Readonly<Record<string, number | string | readonly number[] | null>>

export interface FormulaAnswer {
  readonly ok: true
  readonly name: string
  readonly inputs: Shown
  readonly result: Result
  readonly source: string
  readonly range: string
}

/** One formula on inputs as typed or as JSON: numbers to 6 decimals, instants as ISO 8601. */
export function runOne(formula: Formula, given: Readonly<Record<string, unknown>>): FormulaAnswer | Refusal {
  const input = read(formula, given)
  if (!('values' in input)) return input
  const answer = attempt(formula, input.values)
  if (!('result' in answer)) return answer
  const { name, source, range } = formula
  return { ok: true, name, inputs: show(input.values), result: showResult(answer.result), source, range }
}

/** Each input alone was in range; together they may still be more than the formula holds for. */
function attempt(formula: Formula, values: Values): { readonly result: Result } | Refusal {
  try {
    return formula.run(values)
  } catch (problem) {
    if (problem instanceof OutOfRange) return refuse('out-of-range', problem.word, problem.message)
    throw problem
  }
}

function show(values: Values): Shown {
  return Object.fromEntries(Object.entries(values).map(([key, value]) => [key, showOne(value)]))
}

function showResult(result: Result): Result {
  return Object.fromEntries(Object.entries(result).map(([key, value]) => [key, typeof value === 'number' ? round6(value) : showInner(value)]))
}

function showInner(value: Exclude<Result[string], number>): Result[string] {
  if (value === null || typeof value === 'string') return value
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, round6(each)]))
}

function showOne(value: Values[string]): Shown[string] {
  if (typeof value === 'number') return round6(value)
  if (value === null || typeof value === 'string') return value
  return 'offsetMin' in value ? toIso(value.at) : value.map(round6)
}
