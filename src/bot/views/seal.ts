import type { SealMethod } from '../../core/log/closing-data.js'
import type { Outcome } from '../../core/outcome.js'
import { worst } from '../../core/outcome.js'
import type { Answer } from '../answer.js'
import type { Text } from '../text/text.js'
import { amount } from './amount.js'
import { escapeText } from './escape.js'
import { ledBy } from './first.js'
import type { How } from './how.js'
import { openLines } from './open.js'
import { shapes } from './outcome.js'
import type { Page } from './page.js'
import { flag, num, nums, oneOf, rows, str } from './read.js'
import { pageOf } from './view.js'

/** `seal`: the seal of the night, and what stands open besides. */
export function sealView(answer: Answer, how: How, text: Text): Page {
  const { numbers } = answer
  const { seal } = text.closing
  const open = rows(numbers, 'open')
  const toCutM = num(numbers, 'toCutM') ?? 0
  const lines = [
    ...edgeLine(numbers, how, text),
    ...cutLine(numbers, how, text),
    ...(toCutM > 0 && flag(numbers, 'cut') !== true ? [seal.toCut(amount(toCutM, 'm', how))] : []),
    ...(open.length === 0 && answer.outcome === 'go' ? [text.closing.open.nothing] : [])
  ]
  return ledBy(pageOf(answer, { about: seal.title, lines }, how, text), openFirst(answer, how, text), text)
}

/** All that stands open besides the seal, before what the seal itself is. */
function openFirst({ numbers, at }: Answer, how: How, text: Text): readonly string[] {
  const open = rows(numbers, 'open')
  if (open.length === 0) return []
  const outcomes = open.map((row) => oneOf<Outcome>(row, 'outcome', shapes) ?? 'unknown')
  const lines = open.flatMap((row, i) => openLines([row], at, how, text).map((line) => `${shapes[outcomes[i] ?? 'unknown']} ${line}`))
  const count = open.reduce((sum, row) => sum + Math.max(1, nums(row, 'numbers').length), 0)
  return [`${shapes[worst(outcomes)]} ${text.posts.open(count)}`, ...lines]
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
