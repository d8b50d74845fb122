import { amount } from './amount.js'
import { dateOf } from './clock.js'
import { escapeText } from './escape.js'
import { num, str } from './read.js'
import { pageOf, type View } from './view.js'

/** `day record`, `day csv`: what the file holds, and the anchor that stands for the log. */
export const dayRecordView: View = (answer, how, text) => {
  const { numbers } = answer
  const count = (name: string) => num(numbers, name) ?? 0
  const metres = (name: string) => amount(count(name), 'm', how)
  const anchor = str(numbers, 'anchor')
  const lines = [
    [
      text.day.entries(count('entries')),
      `${text.record.facts.decisions} ${count('decisions')}`,
      `${text.record.facts.overrides} ${count('overrides')}`
    ].join(' · '),
    [text.laid.area(amount(count('areaM2'), 'm2', how)), text.laid.welded(metres('robotM'), metres('handM'))].join(' · '),
    [`${text.record.facts.coupons} ${count('coupons')}`, `${text.record.facts.voids} ${count('voids')}`].join(' · '),
    ...(anchor === null ? [] : [`${text.record.facts.anchor}${text.frame.colon}${escapeText(anchor, 160)}`])
  ]
  return pageOf(answer, { about: text.day.record(dateOf(str(numbers, 'date'), how) ?? ''), lines, caution: null }, how, text)
}

/** `day start`: what must be stated, and what must be in place before anyone goes up. */
export const dayStartView: View = (answer, how, text) =>
  pageOf(answer, { about: text.day.start, lines: text.day.reminders, caution: null }, how, text)
