import type { FoamVerdict } from '../../core/log/data.js'
import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import type { How } from './how.js'
import { numeral } from './number.js'
import type { Page } from './page.js'
import { flag, num, oneOf } from './read.js'
import { pageOf } from './view.js'

/** `foam`: what the test spray says, and how long the foam stays open. */
export function foamView(answer: Answer, how: How, text: Text): Page {
  const { numbers } = answer
  const { foam, yields } = text
  const verdict = oneOf<FoamVerdict>(numbers, 'verdict', foam.verdicts)
  const [openTimeS, scale] = [num(numbers, 'openTimeS'), num(numbers, 'scale')]
  const lines = [
    ...(verdict === null ? [] : [foam.verdicts[verdict]]),
    ...(openTimeS === null ? [] : [(flag(numbers, 'measured') === false ? yields.openTimeOfSheet : foam.openTime)(amount(openTimeS, 's', how))]),
    ...(scale === null ? [] : [foam.scale(numeral(scale, 2, how))])
  ]
  return pageOf(answer, { about: text.findings['test-spray'].name, lines }, how, text)
}
