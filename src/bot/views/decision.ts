import type { LapsedBy } from '../../core/facts.js'
import type { Json } from '../../core/log/entry.js'
import type { Answer } from '../answer.js'
import type { NumberName, Text } from '../text/text.js'
import { amount, unitOfName } from './amount.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import { shapes } from './outcome.js'
import type { Page } from './page.js'
import { flag, num, oneOf, rows, str } from './read.js'
import { pageOf } from './view.js'

const perLine = 4
const closeUpFromPct = 20

/** `spray`: can foam be sprayed. */
export function sprayView(answer: Answer, how: How, text: Text): Page {
  const lines = flag(answer.numbers, 'overridden') === true ? [text.decision.overridden(escapeText(str(answer.numbers, 'reason') ?? '', 200))] : []
  return pageOf(answer, { about: text.activities.spray, lines, details: numbersLines(answer.numbers, how, text) }, how, text)
}

/** `air`: sheets and people. */
export function airView(answer: Answer, how: How, text: Text): Page {
  const { lay, people } = text.activities
  const each = (['lay', 'people'] as const).flatMap((activity) => {
    const outcome = answer.activities[activity]
    return outcome === null ? [] : [`${shapes[outcome]} ${text.activities[activity]}`]
  })
  const lines = each.length > 1 ? [each.join(' · ')] : []
  return pageOf(answer, { about: `${lay}, ${people}`, lines, details: numbersLines(answer.numbers, how, text) }, how, text)
}

/** `weld`: all welders. Rain coming never stops it: the answer says close up now. */
export function weldView(answer: Answer, how: How, text: Text): Page {
  const { numbers } = answer
  const chancePct = num(numbers, 'rainChancePct')
  const closeUp = flag(numbers, 'closeUp') === true || (chancePct !== null && chancePct >= closeUpFromPct)
  const welders = rows(numbers, 'welders')
    .slice(0, 10)
    .map((welder) => welderLine(welder, how, text))
  const lines = closeUp ? [text.decision.closeUp] : []
  return pageOf(answer, { about: text.activities.weld, lines, details: [...welders, ...numbersLines(numbers, how, text)] }, how, text)
}

/** "robot: cleared to weld, 41 mm". */
function welderLine(welder: Readonly<Record<string, Json>>, how: How, text: Text): string {
  const { coupon, labels, frame } = text
  const name = welderName(str(welder, 'name'), text)
  const widthMm = num(welder, 'widthMm')
  const width = widthMm === null ? '' : `, ${labels.width} ${amount(widthMm, 'mm', how)}`
  return `${name}${frame.colon}${clearanceWords(flag(welder, 'cleared'), oneOf<LapsedBy>(welder, 'lapsedBy', coupon.lapsedBy), text)}${width}`
}

export function clearanceWords(cleared: boolean | null, lapsedBy: LapsedBy | null, { coupon }: Text): string {
  if (cleared === true) return coupon.cleared
  return lapsedBy === null ? coupon.notCleared : coupon.notClearedBy(coupon.lapsedBy[lapsedBy])
}

/** `robot` and `hand` in the language, any other name as it is. */
export function welderName(name: string | null, text: Text): string {
  if (name === null) return text.coupon.welder
  return name === 'robot' || name === 'hand' ? text.labels[name] : escapeText(name, 40)
}

/** The numbers of a decision by name, some on each line; what is not known is left out. */
function numbersLines(numbers: Answer['numbers'], how: How, text: Text): readonly string[] {
  const names = Object.keys(text.decision.numbers) as NumberName[]
  const known = names.flatMap((name) => {
    const value = num(numbers, name)
    return value === null ? [] : [`${text.decision.numbers[name]} ${amount(value, unitOfName(name), how)}`]
  })
  const lines: string[] = []
  for (let i = 0; i < known.length; i += perLine) lines.push(known.slice(i, i + perLine).join(' · '))
  return lines
}
