import type { OpenItem } from '../../core/closing/what-is-open.js'
import type { JsonObject } from '../../core/log/entry.js'
import { iso } from '../json.js'

/** What stands open as an answer's JSON: instants as text. */
export function openRows(items: readonly OpenItem[]): readonly JsonObject[] {
  return items.map((item) => ('until' in item ? renamed(item) : { ...item }) as unknown as JsonObject)
}

function renamed({ until, ...item }: Extract<OpenItem, { what: 'fire' }>) {
  return { ...item, untilAt: iso(until) }
}
