import { picked } from '../fields.js'
import { atNumber, takeQuantity } from '../quantity.js'
import { Refused } from '../refused.js'
import { slotValue } from '../slot.js'
import { by } from '../slots/by.js'
import { slots } from '../slots/numbers.js'
import { flag, putNumber } from '../take.js'
import { lexiconOf } from '../vocabulary.js'
import type { Grammar, Vocabulary, Walk } from '../walk.js'

export const fireVocabulary: Vocabulary = {
  heat: { words: { en: 'heat', es: 'calor', fr: 'chaleur' }, read: flag({ heat: true }) },
  done: { words: { en: 'done', es: 'terminad(o,a) hech(o,a)', fr: 'terminé(,e) fait(,e)' }, read: flag({ done: true }) },
  by
}

/** A bare number is how long the permit wants the watch. */
function other(walk: Walk): boolean {
  if (!atNumber(walk)) return false
  const quantity = takeQuantity(walk)
  putNumber(walk, { raw: quantity.raw, label: 'watch' }, 'watchMin', slots.watch, slotValue(quantity, slots.watch, walk.reader))
  return true
}

const lexicon = lexiconOf(fireVocabulary, other)

export const fire: Grammar = {
  command: 'fire',
  lexicon: () => lexicon,
  build: ({ fields }) => {
    if (fields.heat && fields.done) throw new Refused('inconsistent', 'done', { label: 'done', other: 'heat' })
    return { command: 'fire', fire: picked(fields, ['heat', 'watchMin', 'done', 'by']) }
  }
}
