import { atEnd, noValue } from '../cursor.js'
import { picked } from '../fields.js'
import { nameOf, takeName } from '../names.js'
import { atNumber, takeQuantity } from '../quantity.js'
import { missing, Refused } from '../refused.js'
import { slotValue } from '../slot.js'
import { kitWords, putKitName } from '../slots/kit.js'
import { slots } from '../slots/numbers.js'
import { handWords, robotWords } from '../slots/peel.js'
import { number, putNumber, takeNumber } from '../take.js'
import { lexiconOf } from '../vocabulary.js'
import { type Grammar, type Heard, note, type Vocabulary, type Walk } from '../walk.js'
import { sheetsWords } from './strip.js'

function readKit(walk: Walk, heard: Heard): void {
  const name = atEnd(walk) ? null : takeName(walk, nameOf)
  if (name === null) throw noValue(walk, heard.raw, 'kit')
  putKitName(walk, heard, name)
}

export const laidVocabulary: Vocabulary = {
  sheets: { words: sheetsWords, read: number(slots.sheets, 'sheets') },
  course: { words: { en: 'course', es: 'hilera fila hilada', fr: 'rang lé' }, read: number(slots.course, 'course') },
  kit: { words: kitWords, read: readKit },
  robot: { words: robotWords, read: number(slots.robot, 'robotM') },
  hand: { words: handWords, read: number(slots.hand, 'handM') }
}

/** `R2 20 m`: metres of a welder with another name. */
function takeWelded(walk: Walk, name: string): void {
  const heard = { raw: name, label: 'welder' }
  const metres = takeNumber(walk, slots.welded, heard)
  const { othersM = {} } = walk.fields
  if ((othersM[name] ?? metres) !== metres) throw new Refused('duplicate', name, { label: 'welder' })
  walk.fields.othersM = { ...othersM, [name]: metres }
  note(walk, 'welder', name)
  note(walk, 'length', metres, 'm')
}

/** A bare number is the area, a name that of a welder. */
function other(walk: Walk): boolean {
  if (!atNumber(walk)) {
    const name = takeName(walk)
    if (name !== null) takeWelded(walk, name)
    return name !== null
  }
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
    const rest = picked(fields, ['sheets', 'course', 'robotM', 'handM', 'othersM'])
    return { command: 'laid', laid: { areaM2, ...rest, ...(kitName === undefined ? {} : { kit: kitName }) } }
  }
}
