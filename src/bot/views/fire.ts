import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { clockOf } from './clock.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import { shapes } from './outcome.js'
import type { Page } from './page.js'
import { num, str } from './read.js'
import { pageOf } from './view.js'

/** `fire`: how long the watch still lasts, and from which heat it counts. */
export function fireView(answer: Answer, how: How, text: Text): Page {
  const { numbers, at } = answer
  const { fire } = text.closing
  const [heat, until] = [clockOf(str(numbers, 'heatAt'), at, how), clockOf(str(numbers, 'untilAt'), at, how)]
  const by = str(numbers, 'by')
  const lines = [
    ...stateLine(str(numbers, 'state'), until, amount(num(numbers, 'leftMin') ?? 0, 'min', how), by === null ? null : escapeText(by, 40), text),
    ...(heat === null ? [fire.noHeat, text.first.heat] : [fire.heat(heat)]),
    fire.length(amount(num(numbers, 'watchMin') ?? 0, 'min', how)),
    fire.permit
  ]
  if (heat !== null) return pageOf(answer, { about: fire.title, lines }, how, text)
  const page = pageOf({ ...answer, findings: [] }, { about: fire.title, lines }, how, text)
  return { ...page, head: `${shapes.unknown} ${text.outcomes.unknown}${text.frame.colon}${fire.title} — ${text.first.noHeat}` }
}

function stateLine(state: string | null, until: string | null, left: string, by: string | null, { closing: { fire } }: Text): readonly string[] {
  if (state === 'running') return [fire.running(until ?? '', left)]
  if (state === 'unsigned') return [fire.unsigned(until ?? '')]
  return state === 'done' ? [fire.done(by)] : []
}
