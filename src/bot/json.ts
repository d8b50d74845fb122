import { type Instant, toIso } from '../core/instant.js'
import type { Json, JsonObject } from '../core/log/entry.js'
import { round6 } from '../core/units.js'

/** An instant as it leaves the program. */
export function iso(at: Instant | null): string | null {
  return at === null ? null : toIso(at)
}

/** Numbers rounded to 6 decimals, instants under `at` or `…At` as ISO text, undefined members left out: what may be logged or sent. */
export function toJson(value: unknown, key = ''): Json {
  if (value === null || value === undefined) return null
  if (typeof value === 'number') return key === 'at' || key.endsWith('At') ? toIso(value) : numberJson(value)
  if (Array.isArray(value)) return value.map((each) => toJson(each))
  if (typeof value !== 'object') return value as string | boolean
  const result: Record<string, Json> = {}
  for (const name of Object.keys(value)) {
    const each = (value as Readonly<Record<string, unknown>>)[name]
    if (each !== undefined) result[name] = toJson(each, name)
  }
  return result
}

/** A number as it leaves the program: six decimals. Throws for NaN and infinite ones. */
export function numberJson(value: number): number {
  if (!Number.isFinite(value)) throw new Error('a number that is not finite cannot leave the program')
  return round6(value)
}

export function toJsonObject(value: object): JsonObject {
  return toJson(value) as JsonObject
}
