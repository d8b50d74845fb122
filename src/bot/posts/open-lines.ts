import { type OpenItem, whatIsOpen } from '../../core/closing/what-is-open.js'
import type { Memory } from '../../core/gather/memory.js'
import type { Instant } from '../../core/instant.js'
import type { VoidState } from '../../core/log/states/void.js'
import type { WelderState } from '../../core/log/states/welder.js'
import type { SiteSettings } from '../../core/site.js'
import { openRows } from '../closing/open-rows.js'
import type { Text } from '../text/text.js'
import { amount } from '../views/amount.js'
import type { How } from '../views/how.js'
import { lineOf } from '../views/open.js'
import { shapes } from '../views/outcome.js'

const mostNumbers = 10

/** A site at the end of a day, as far as these lines need it. */
export interface OpenOn {
  readonly memory: Pick<Memory, 'site' | 'today' | 'yesterday'>
  readonly record: { readonly welders: readonly WelderState[]; readonly voids: readonly VoidState[] }
  readonly settings: SiteSettings
  readonly now: Instant
}

/** How many things still stand open at the end of the day, and a line for each of the first. */
export function openLines(on: OpenOn, how: How, text: Text): { readonly count: number; readonly lines: readonly string[] } {
  const { memory, record, settings, now } = on
  const { site, today, yesterday } = memory
  const { items } = whatIsOpen({ site, today, yesterday, welders: record.welders, substrate: settings.substrate, now })
  return {
    count: items.reduce((sum, item) => sum + ('numbers' in item ? item.numbers.length : 1), 0),
    lines: items.flatMap((item) => itemLines(item, on, how, text).map((line) => `${shapes[item.outcome]} ${line}`))
  }
}

/** One thing that stands open: voids a line each, with their places, all else as an answer says it. */
export function itemLines(item: OpenItem, on: OpenOn, how: How, text: Text): readonly string[] {
  if (item.what === 'voids' || item.what === 'reprobe') return some(item.numbers, text, (number) => voidLine(number, on.record.voids, how, text))
  return openRows([item]).flatMap((row) => lineOf(row, on.now, how, text) ?? [])
}

function some(numbers: readonly number[], text: Text, line: (number: number) => string): readonly string[] {
  const lines = numbers.slice(0, mostNumbers).map(line)
  return numbers.length > mostNumbers ? [...lines, text.frame.more(numbers.length - mostNumbers)] : lines
}

/** "void 1: course 4, end joint, at 3.2 m, 40 mm long, open". */
function voidLine(number: number, voids: readonly VoidState[], how: How, { probe, frame }: Text): string {
  const found = voids.find((each) => each.number === number)
  if (found === undefined) return probe.number(number)
  const { course, on, distanceM, lengthMm } = found.found
  const at = distanceM === null ? [] : [probe.at(amount(distanceM, 'm', how))]
  const parts = [probe.course(course), probe.on[on], ...at, probe.long(amount(lengthMm, 'mm', how)), probe.states[found.state]]
  return `${probe.number(number)}${frame.colon}${parts.join(', ')}`
}
