import type { BondBreak } from '../../core/log/closing-data.js'
import type { Json } from '../../core/log/entry.js'
import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import type { How } from './how.js'
import { numeral } from './number.js'
import { substrateName } from './open.js'
import type { Page } from './page.js'
import { num, oneOf, rows, str } from './read.js'
import { pageOf } from './view.js'

/** `bond`: the square just told, or all of the day. */
export function bondView(answer: Answer, how: How, text: Text): Page {
  const { numbers } = answer
  const squares = rows(numbers, 'bonds')
  const told = str(numbers, 'substrate')
  const { bond } = text.closing
  const about = told === null ? text.closing.findings['bond-square'].name : bond.square(substrateName(told, text))
  const lines = told === null ? squares.map((one) => `${nameOf(one, text)}${text.frame.colon}${said(one, how, text)}`) : [said(numbers, how, text)]
  return pageOf(answer, { about, lines: squares.length === 0 ? [bond.none] : lines.filter((line) => line !== '') }, how, text)
}

function nameOf(one: Readonly<Record<string, Json>>, text: Text): string {
  return substrateName(str(one, 'substrate') ?? '', text)
}

/** "foam on both faces, force 900 N, wanted 500 N, 10 kPa". */
function said(one: Readonly<Record<string, Json>>, how: How, { closing }: Text): string {
  const { bond } = closing
  const broke = oneOf<BondBreak>(one, 'broke', bond.breaks)
  const [forceN, wantedN, stressKpa] = [num(one, 'forceN'), num(one, 'wantedN'), num(one, 'stressKpa')]
  return [
    ...(broke === null ? [] : [bond.breaks[broke]]),
    ...(forceN === null ? [] : [bond.force(amount(forceN, 'N', how))]),
    ...(wantedN === null ? [] : [bond.wanted(amount(wantedN, 'N', how))]),
    ...(stressKpa === null ? [] : [bond.stress(numeral(stressKpa, 1, how))])
  ].join(', ')
}
