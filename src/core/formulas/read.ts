import { DateTime } from 'luxon'
import { fromIso } from '../instant.js'
import {
  type Formula,
  type Input,
  type InstantInput,
  type NumberInput,
  type NumbersInput,
  type Refusal,
  refuse,
  type Values,
  type WordInput,
  type WrittenInstant
} from './formula.js'

type Value = Values[string]
type Read = { readonly value: Value } | Refusal

const plainNumber = /^[-−+]?(\d+(\.\d*)?|\.\d+)(e[-+]?\d+)?$/i
const mostNumbers = 10_000

/** The inputs of a formula from what was typed (`KEY=VALUE`) or sent as JSON, defaults filled in; the first thing wrong otherwise. */
export function read({ inputs }: Formula, given: Readonly<Record<string, unknown>>): { readonly values: Values } | Refusal {
  const stranger = Object.keys(given).find((key) => !Object.hasOwn(inputs, key))
  if (stranger !== undefined) return refuse('unknown-word', stranger, `takes ${Object.keys(inputs).join(' ')}`)
  const values: Record<string, Value> = {}
  for (const [key, input] of Object.entries(inputs)) {
    const one = readOne(key, input, given[key])
    if (!('value' in one)) return one
    values[key] = one.value
  }
  return { values }
}

function readOne(key: string, input: Input, raw: unknown): Read {
  if (raw === undefined || raw === null) {
    const fallback = input.kind === 'number' ? input.default : undefined
    return fallback === undefined ? refuse('missing', key, `${key} is needed`) : { value: fallback }
  }
  if (input.kind === 'number') return readNumber(key, input, raw)
  if (input.kind === 'numbers') return readNumbers(key, input, raw)
  return input.kind === 'word' ? readWord(key, input, raw) : readInstant(key, input, raw)
}

function toNumber(raw: unknown): number | null {
  if (typeof raw === 'number') return Number.isFinite(raw) ? raw : null
  if (typeof raw !== 'string' || !plainNumber.test(raw.trim())) return null
  const value = Number(raw.trim().replace('−', '-'))
  return Number.isFinite(value) ? value : null
}

function readNumber(key: string, input: NumberInput, raw: unknown): Read {
  const value = toNumber(raw)
  if (value === null) return refuse('bad-number', show(raw), `${key} is a number with a point`)
  const inside = input.above ? value > input.min && value <= input.max : value >= input.min && value <= input.max
  if (!inside)
    return refuse('out-of-range', key, `${key} ${value} is outside ${input.above ? '> ' : ''}${input.min}…${input.max} ${input.unit}`.trim())
  if (input.whole && !Number.isInteger(value)) return refuse('bad-number', show(raw), `${key} is a whole number`)
  return { value }
}

function readNumbers(key: string, input: NumbersInput, raw: unknown): Read {
  const list: readonly unknown[] = Array.isArray(raw) ? raw : typeof raw === 'string' ? raw.split(/[,;\s]+/).filter((part) => part !== '') : [raw]
  if (list.length === 0) return refuse('missing', key, `${key} is needed`)
  if (list.length > mostNumbers) return refuse('out-of-range', key, `${key} takes ${mostNumbers} numbers at most`)
  const values: number[] = []
  for (const part of list) {
    const one = readNumber(key, { ...input, kind: 'number' }, part)
    if (!('value' in one)) return one
    values.push(one.value as number)
  }
  return { value: values }
}

function readWord(key: string, input: WordInput, raw: unknown): Read {
  const word = show(raw).trim()
  return input.words.includes(word) ? { value: word } : refuse('unknown-word', word, `${key} is one of ${input.words.join(' ')}`)
}

function readInstant(key: string, input: InstantInput, raw: unknown): Read {
  const text = show(raw).trim()
  const at = typeof raw === 'string' ? fromIso(text) : null
  if (at === null) return refuse('bad-number', text, `${key} is ISO 8601 with Z or an offset`)
  if (!(at >= input.min && at <= input.max)) return refuse('out-of-range', key, `${key} ${text} is outside its years`)
  const value: WrittenInstant = { at, offsetMin: DateTime.fromISO(text, { setZone: true }).offset }
  return { value }
}

/** What was given, short enough to be repeated. */
function show(raw: unknown): string {
  const text = typeof raw === 'string' ? raw : (JSON.stringify(raw) ?? String(raw))
  return text.slice(0, 60)
}
