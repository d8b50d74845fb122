import type { DetailKind } from '../../core/log/closing-data.js'
import type { JsonObject } from '../../core/log/entry.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { clockOf } from './clock.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import { num, nums, oneOf, str, strings } from './read.js'
import { welderName } from './welder.js'

const mostNumbers = 20

/** What stands open (`openRows`), one line each; instants as of `now`. */
export function openLines(rows: readonly JsonObject[], now: number, how: How, text: Text): readonly string[] {
  return rows.flatMap((row) => lineOf(row, now, how, text) ?? [])
}

/** One thing that stands open, in the words of answers, posts, records and home alike; null for what is none. */
export function lineOf(row: JsonObject, now: number, how: How, text: Text): string | null {
  const { open } = text.closing
  const { still } = text.posts
  const why = str(row, 'why')
  switch (str(row, 'what')) {
    case 'voids':
      return open.voids(numbers(row, text))
    case 'reprobe':
      return open.reprobe(numbers(row, text))
    case 'punch':
      return still.punch(numbers(row, text))
    case 'on-hold':
      return `${welderName(str(row, 'welder'), text)}${text.frame.colon}${text.coupon.onHold(amount(num(row, 'metresM') ?? 0, 'm', how))}`
    case 'seal':
      return why === 'open' ? still.sealOpen(amount(num(row, 'openEdgeM') ?? 0, 'm', how)) : still.sealUnstated
    case 'drains':
      return why === 'shut' ? still.drainsShut : still.drainsUnstated
    case 'sheets':
      return why === 'loose' ? still.sheetsLoose : still.sheetsUnstated
    case 'bond':
      return still.bond[oneOf<'unstated' | 'failed' | 'unjudged'>(row, 'why', still.bond) ?? 'unstated'](
        substrateName(str(row, 'substrate') ?? '', text)
      )
    case 'details':
      return still.details[why === 'bad' ? 'bad' : 'unchecked'](kindNames(row, text))
    case 'fire':
      return why === 'running' ? still.fireUntil(clockOf(str(row, 'untilAt'), now, how) ?? '') : still.fireUnsigned
    default:
      return null
  }
}

function kindNames(row: JsonObject, { closing: { detail } }: Text): string {
  return strings(row, 'kinds')
    .flatMap((kind) => (Object.hasOwn(detail.kinds, kind) ? [detail.kinds[kind as DetailKind]] : []))
    .join(', ')
}

function numbers(row: JsonObject, { frame }: Text): string {
  const all = nums(row, 'numbers')
  const more = all.length > mostNumbers ? [frame.more(all.length - mostNumbers)] : []
  return [...all.slice(0, mostNumbers).map(String), ...more].join(', ')
}

/** A substrate of ours in the language, any other as its limits sheet calls it. */
export function substrateName(kind: string, { site }: Text): string {
  return Object.hasOwn(site.substrates, kind) ? (site.substrates[kind] as string) : escapeText(kind, 40)
}
