import type { Json } from '../../core/log/entry.js'

type Numbers = Readonly<Record<string, Json>>

/** A number by its name; null when it is not there or not known. */
export function num(numbers: Numbers, name: string): number | null {
  const value = numbers[name]
  return typeof value === 'number' && Number.isFinite(value) ? value : null
}

export function str(numbers: Numbers, name: string): string | null {
  const value = numbers[name]
  return typeof value === 'string' ? value : null
}

export function flag(numbers: Numbers, name: string): boolean | null {
  const value = numbers[name]
  return typeof value === 'boolean' ? value : null
}

/** The objects of a list; what is none is left out. */
export function rows(numbers: Numbers, name: string): readonly Numbers[] {
  const value = numbers[name]
  return Array.isArray(value) ? value.map((item: Json) => asRow(item)).filter((item) => item !== null) : []
}

export function row(numbers: Numbers, name: string): Numbers | null {
  return asRow(numbers[name] ?? null)
}

export function strings(numbers: Numbers, name: string): readonly string[] {
  const value = numbers[name]
  return Array.isArray(value) ? value.filter((item: Json): item is string => typeof item === 'string') : []
}

export function nums(numbers: Numbers, name: string): readonly number[] {
  const value = numbers[name]
  return Array.isArray(value) ? value.filter((item: Json): item is number => typeof item === 'number') : []
}

/** A word of a closed list; null for any other. */
export function oneOf<T extends string>(numbers: Numbers, name: string, words: Readonly<Record<T, unknown>>): T | null {
  const value = str(numbers, name)
  return value !== null && Object.hasOwn(words, value) ? (value as T) : null
}

function asRow(value: Json): Numbers | null {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Numbers) : null
}
