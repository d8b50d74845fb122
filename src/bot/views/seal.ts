import type { SealMethod } from '../../core/log/closing-data.js'
import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { escapeText } from './escape.js'
import type { How } from './how.js'
import { openLines } from './open.js'
import type { Page } from './page.js'
import { flag, num, oneOf, rows, str } from './read.js'
import { pageOf } from './view.js'

/** `seal`: the seal of the night, and what stands open besides. */
export function sealView(answer: Answer, how: How, text: Text): Page {
  const { numbers, at } = answer
  const { seal } = text.closing
  const open = openLines(rows(numbers, 'open'), at, how, text)
  const toCutM = num(numbers, 'toCutM') ?? 0
  const lines = [
    ...edgeLine(numbers, how, text),
    ...cutLine(numbers, how, text),
    ...(toCutM > 0 && flag(numbers, 'cut') !== true ? [seal.toCut(amount(toCutM, 'm', how))] : []),
    ...(open.length === 0 ? [] : [`${seal.open}${text.frame.colon}${open.join(' · ')}`])
  ]
  return pageOf(answer, { about: seal.title, lines }, how, text)
}

function edgeLine(numbers: Answer['numbers'], how: How, { closing: { seal } }: Text): readonly string[] {
  const [edgeM, photos, by] = [num(numbers, 'openEdgeM'), num(numbers, 'photos') ?? 0, str(numbers, 'by')]
  const method = oneOf<SealMethod>(numbers, 'method', seal.methods)
  const parts = [
    ...(edgeM === null ? [] : [edgeM > 0 ? seal.edge(amount(edgeM, 'm', how)) : seal.noEdge]),
    ...(method === null ? [] : [seal.methods[method]]),
    ...(by === null ? [] : [seal.by(escapeText(by, 40))]),
    ...(photos > 0 ? [seal.photos(photos)] : [])
  ]
  return parts.length === 0 ? [] : [parts.join(', ')]
}

function cutLine(numbers: Answer['numbers'], how: How, { closing: { seal } }: Text): readonly string[] {
  if (flag(numbers, 'cut') !== true) return []
  const wetM = num(numbers, 'wetM')
  return [wetM === null ? seal.cut : `${seal.cut}, ${seal.wet(amount(wetM, 'm', how))}`]
}
