import type { JsonObject } from '../../core/log/entry.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { clockOf } from './clock.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import { num, nums, oneOf, str } from './read.js'
import { welderName } from './welder.js'

const mostNumbers = 20

/** What stands open (`openRows`), one line each; instants as of `now`. */
export function openLines(rows: readonly JsonObject[], now: number, how: How, text: Text): readonly string[] {
  return rows.flatMap((row) => lineOf(row, now, how, text) ?? [])
}

function lineOf(row: JsonObject, now: number, how: How, text: Text): string | null {
  const { open } = text.closing
  switch (str(row, 'what')) {
    case 'voids':
      return open.voids(numbers(row, text))
    case 'reprobe':
      return open.reprobe(numbers(row, text))
    case 'punch':
      return open.punch(numbers(row, text))
    case 'on-hold':
      return open.onHold(welderName(str(row, 'welder'), text), amount(num(row, 'metresM') ?? 0, 'm', how))
    case 'bond': {
      const why = oneOf<'unstated' | 'failed' | 'unjudged'>(row, 'why', open.bondWhy)
      return `${open.bond(substrateName(str(row, 'substrate') ?? '', text))}${text.frame.colon}${why === null ? '' : open.bondWhy[why]}`
    }
    case 'fire':
      return str(row, 'why') === 'running' ? open.fire(clockOf(str(row, 'untilAt'), now, how) ?? '') : open.fireUnsigned
    default:
      return sealLine(row, how, text)
  }
}

function sealLine(row: JsonObject, how: How, { closing }: Text): string | null {
  const { findings } = closing
  const outcome = str(row, 'outcome') === 'unknown' ? 'unknown' : 'no-go'
  const edgeM = num(row, 'openEdgeM')
  switch (str(row, 'what')) {
    case 'seal':
      return edgeM === null ? findings['night-seal'].is[outcome] : `${findings['night-seal'].is[outcome]}, ${amount(edgeM, 'm', how)}`
    case 'drains':
      return findings['drains-open'].is[outcome]
    case 'sheets':
      return findings['sheets-safe'].is[outcome]
    default:
      return null
  }
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
