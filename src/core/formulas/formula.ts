import type { Instant } from '../instant.js'

/** What one input may be: the ends of a range are included, except `min` where `above` is set. `default: null`: may be left out. */
export interface NumberInput {
  readonly kind: 'number'
  readonly unit: string
  readonly min: number
  readonly max: number
  readonly above?: true
  readonly whole?: true
  readonly default?: number | null
}

/** One or more numbers. */
export interface NumbersInput {
  readonly kind: 'numbers'
  readonly unit: string
  readonly min: number
  readonly max: number
}

export interface WordInput {
  readonly kind: 'word'
  readonly words: readonly string[]
}

export interface InstantInput {
  readonly kind: 'instant'
  readonly min: Instant
  readonly max: Instant
}

export type Input = NumberInput | NumbersInput | WordInput | InstantInput

/** An instant with the offset from UTC that it was written with. */
export interface WrittenInstant {
  readonly at: Instant
  readonly offsetMin: number
}

type ValueOf<I extends Input> = I extends NumbersInput
  ? readonly number[]
  : I extends WordInput
    ? I['words'][number]
    : I extends InstantInput
      ? WrittenInstant
      : I extends { readonly default: null }
        ? number | null
        : number

export type Values = Readonly<Record<string, number | string | readonly number[] | WrittenInstant | null>>
export type Result = Readonly<Record<string, number | string | null | Readonly<Record<string, number>>>>

export type RefusalCode = 'unknown-command' | 'unknown-word' | 'missing' | 'bad-number' | 'wrong-unit' | 'out-of-range' | 'inconsistent'

export interface Refusal {
  readonly ok: false
  readonly code: RefusalCode
  /** The name, key or value that was refused. */
  readonly word: string
  readonly message: string
}

export interface Formula {
  readonly name: string
  readonly inputs: Readonly<Record<string, Input>>
  readonly source: string
  /** The ranges of the inputs, in words. */
  readonly range: string
  run(values: Values): { readonly result: Result } | Refusal
}

interface Definition<S extends Readonly<Record<string, Input>>> {
  readonly name: string
  readonly inputs: S
  readonly source: string
  run(values: { readonly [K in keyof S]: ValueOf<S[K]> }): Result | Refusal
}

/** A formula for the map; `run` gets its inputs read, in range and with the types that their kinds promise. */
export function formula<const S extends Readonly<Record<string, Input>>>(definition: Definition<S>): Formula {
  const { name, inputs, source } = definition
  return {
    name,
    inputs,
    source,
    range: Object.entries(inputs).map(rangeOf).join(' · '),
    run(values) {
      // `read` makes the values from this very `inputs`, so that they have these types.
      const answer = definition.run(values as { readonly [K in keyof S]: ValueOf<S[K]> })
      return isRefusal(answer) ? answer : { result: answer }
    }
  }
}

function isRefusal(answer: Result | Refusal): answer is Refusal {
  return (answer as { readonly ok?: unknown }).ok === false
}

/** For what only several inputs together show. */
export function refuse(code: RefusalCode, word: string, message: string): Refusal {
  return { ok: false, code, word, message }
}

function rangeOf([key, input]: readonly [string, Input]): string {
  if (input.kind === 'word') return `${key} ${input.words.join(', ')}`
  if (input.kind === 'instant') return `${key} ISO 8601 with Z or offset`
  const open = input.kind === 'number' && input.above ? '> ' : ''
  return `${key} ${open}${input.min}…${input.max}${input.unit === '' ? '' : ` ${input.unit}`}`
}
