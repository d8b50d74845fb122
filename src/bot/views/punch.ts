import type { Json } from '../../core/log/entry.js'
import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { clockOf } from './clock.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import type { Page } from './page.js'
import { num, oneOf, rows, str } from './read.js'
import { pageOf } from './view.js'

const mostItems = 40

/** `punch`: the item that was spoken of, how many are left, the list. */
export function punchView(answer: Answer, how: How, text: Text): Page {
  const { numbers } = answer
  const { punch } = text.closing
  const list = rows(numbers, 'list')
  const [open, done] = [num(numbers, 'open') ?? 0, num(numbers, 'done') ?? 0]
  const lines = [
    ...(str(numbers, 'text') === null ? [] : [itemLine(numbers, answer, how, text)]),
    open + done === 0 ? punch.empty : punch.counts(open, done),
    ...list.slice(0, mostItems).map((one) => itemLine(one, answer, how, text)),
    ...(list.length > mostItems ? [text.frame.more(list.length - mostItems)] : [])
  ]
  return pageOf(answer, { about: punch.title, lines }, how, text)
}

function itemLine(one: Readonly<Record<string, Json>>, { at }: Answer, how: How, { closing: { punch, seal } }: Text): string {
  const state = oneOf<'open' | 'done'>(one, 'state', punch.states)
  const opened = clockOf(str(one, 'at'), at, how)
  const photos = num(one, 'photos') ?? 0
  const item = punch.item(num(one, 'number') ?? 0, escapeText(str(one, 'text') ?? '', 200))
  const rest = [...(opened === null ? [] : [opened]), ...(photos > 0 ? [seal.photos(photos)] : []), ...(state === null ? [] : [punch.states[state]])]
  return rest.length === 0 ? item : `${item} (${rest.join(', ')})`
}
