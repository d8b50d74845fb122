import type { Json } from '../../core/log/entry.js'

/** JSON to text, the same on every database; members keep their order. Throws for NaN and infinite numbers, which JSON would turn into null. */
export function toText(value: unknown): string {
  refuse(value)
  const text = JSON.stringify(value) as string | undefined
  if (text === undefined) throw new TypeError('not JSON: cannot be kept')
  return text
}

/** Text that `toText` wrote, back to its value. */
export function fromText<T = Json>(text: string): T {
  return JSON.parse(text) as T
}

/**
 * A key as it may stand in a text column. PostgreSQL refuses NUL and SQLite does not; half a surrogate pair becomes another
 * character on the way to either.
 */
export function plain(text: string): string {
  if (/[\0\p{Surrogate}]/u.test(text)) throw new TypeError('a key holds NUL or half a surrogate pair')
  return text
}

/** Beforehand: handing this to `JSON.stringify` would take longer than the rest of it. */
function refuse(value: unknown): void {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new TypeError('not JSON: a number that is not finite')
  if (typeof value !== 'object' || value === null) return
  if (Array.isArray(value)) for (const each of value) refuse(each)
  else for (const name in value) refuse((value as Readonly<Record<string, unknown>>)[name])
}
