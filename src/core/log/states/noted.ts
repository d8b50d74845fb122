import type { Instant } from '../../instant.js'
import type { JsonObject } from '../entry.js'

/** A value as it was last said, and when. */
export interface Noted<T> {
  readonly value: T
  readonly at: Instant
  readonly seq: number
}

/** An entry as a fold sees it: undone ones left out, corrections applied, in order of `at`, then of arrival. */
export interface Step {
  readonly seq: number
  readonly at: Instant
  readonly type: string
  readonly subject: string
  readonly data: JsonObject
}

/** Notes every member of `data` that is among `keys`. */
export function noteAll<S extends Readonly<Record<string, Noted<unknown> | undefined>>>(latest: S, step: Step, keys: ReadonlySet<string>): S {
  const next: Record<string, Noted<unknown> | undefined> = { ...latest }
  for (const [key, value] of Object.entries(step.data)) {
    if (keys.has(key)) next[key] = { value, at: step.at, seq: step.seq }
  }
  return next as S
}
