import type { Loose } from '../types.js'

/** One look over blocks: what is wrong, in the service's words, and how many characters they hold together. */
export interface Check {
  readonly problems: string[]
  letters: number
  readonly surface: 'message' | 'modal' | 'home'
  readonly fileReady: (id: unknown) => boolean
  readonly blockIds: Set<string>
}

export function problem(check: Check, at: string, what: string): void {
  check.problems.push(`[ERROR] ${what} [json-pointer:${at}]`)
}

export function asObject(check: Check, value: unknown, at: string): Loose | null {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) return value as Loose
  problem(check, at, value === undefined ? 'missing required field' : 'must provide an object')
  return null
}

/** Keys that the service does not know are refused by it. */
export function onlyKeys(check: Check, value: Loose, known: readonly string[], at: string): void {
  for (const key of Object.keys(value)) if (!known.includes(key)) problem(check, at, `invalid additional property: ${key}`)
}

/** A text of `min` to `max` characters (code points). */
export function string(check: Check, value: unknown, at: string, max: number, min = 1): void {
  if (value === undefined) return void problem(check, at, 'missing required field')
  if (typeof value !== 'string') return void problem(check, at, 'must provide a string')
  const length = [...value].length
  if (length < min) problem(check, at, `must be more than ${min - 1} characters`)
  if (length > max) problem(check, at, `must be less than ${max + 1} characters`)
}

export function optionalString(check: Check, value: unknown, at: string, max: number): void {
  if (value !== undefined) string(check, value, at, max)
}

/** A text object. What it holds counts towards the whole. */
export function text(check: Check, value: unknown, at: string, max: number, kind: 'plain_text' | 'any'): void {
  const object = asObject(check, value, at)
  if (object === null) return
  if (object.type !== 'plain_text' && !(kind === 'any' && object.type === 'mrkdwn'))
    problem(check, `${at}/type`, `unsupported type: ${String(object.type)}`)
  onlyKeys(check, object, object.type === 'mrkdwn' ? ['type', 'text', 'verbatim'] : ['type', 'text', 'emoji'], at)
  string(check, object.text, `${at}/text`, max)
  if (typeof object.text === 'string') check.letters += [...object.text].length
}

export function optionalText(check: Check, value: unknown, at: string, max: number, kind: 'plain_text' | 'any' = 'plain_text'): void {
  if (value !== undefined) text(check, value, at, max, kind)
}

/** A list of `min` to `max` items, each looked at. */
export function list(check: Check, value: unknown, at: string, max: number, each: (item: Loose, at: string) => void, min = 1): void {
  if (!Array.isArray(value)) return void problem(check, at, value === undefined ? 'missing required field' : 'must provide an array')
  if (value.length < min) problem(check, at, `no fewer than ${min} items allowed`)
  if (value.length > max) problem(check, at, `no more than ${max} items allowed`)
  for (const [i, item] of value.entries()) {
    const object = asObject(check, item, `${at}/${i}`)
    if (object !== null) each(object, `${at}/${i}`)
  }
}
