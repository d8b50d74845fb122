import { atEnd, noValue } from '../cursor.js'
import { picked } from '../fields.js'
import { nameOf, takeName } from '../names.js'
import { atNumber, takeQuantity } from '../quantity.js'
import { missing } from '../refused.js'
import { slotValue } from '../slot.js'
import { kitWords, putKitName } from '../slots/kit.js'
import { slots } from '../slots/numbers.js'
import { handWords, robotWords } from '../slots/peel.js'
import { number, putNumber } from '../take.js'
import { lexiconOf } from '../vocabulary.js'
import type { Grammar, Heard, Vocabulary, Walk } from '../walk.js'
import { sheetsWords } from './strip.js'

function readKit(walk: Walk, heard: Heard): void {
  const name = atEnd(walk) ? null : takeName(walk, nameOf)
  if (name === null) throw noValue(walk, heard.raw, 'kit')
  putKitName(walk, heard, name)
}

export const laidVocabulary: Vocabulary = {
  sheets: { words: sheetsWords, read: number(slots.sheets, 'sheets') },
  course: { words: { en: 'course', es: 'hilera fila', fr: 'rang lé' }, read: number(slots.course, 'course') },
  kit: { words: kitWords, read: readKit },
  robot: { words: robotWords, read: number(slots.robot, 'robotM') },
  hand: { words: handWords, read: number(slots.hand, 'handM') }
}

/** A bare number is the area. */
function other(walk: Walk): boolean {
  if (!atNumber(walk)) return false
  const quantity = takeQuantity(walk)
  putNumber(walk, { raw: quantity.raw, label: 'area' }, 'areaM2', slots.area, slotValue(quantity, slots.area, walk.reader))
  return true
}

const lexicon = lexiconOf(laidVocabulary, other)

export const laid: Grammar = {
  command: 'laid',
  lexicon: () => lexicon,
  build: ({ fields }) => {
    const { areaM2, kitName } = fields
    if (areaM2 === undefined) throw missing('area')
    const rest = picked(fields, ['sheets', 'course', 'robotM', 'handM'])
    return { command: 'laid', laid: { areaM2, ...rest, ...(kitName === undefined ? {} : { kit: kitName }) } }
  }
}
