import type { BondBreak } from '../../../core/log/closing-data.js'
import { picked } from '../fields.js'
import type { Words } from '../forms.js'
import { atNumber, takeQuantity } from '../quantity.js'
import { slotValue } from '../slot.js'
import { slots } from '../slots/numbers.js'
import { photo } from '../slots/photo.js'
import { substrateKinds } from '../slots/substrate-kinds.js'
import { flag, negated, number, putNumber } from '../take.js'
import { lexiconOf, meaningsOf } from '../vocabulary.js'
import type { Grammar, Vocabulary, Walk } from '../walk.js'

/** Where the square broke. */
const breaks: Readonly<Record<BondBreak, Words>> = {
  foam: { en: 'foam', es: 'espuma', fr: 'mousse' },
  fleece: { en: 'fleece', es: 'fieltro vellón', fr: 'feutre' },
  facer: { en: 'facer facing', es: 'revestimiento', fr: 'parement' },
  face: { en: 'clean clean_face', es: 'limpi(o,a) cara_limpia', fr: 'propre face_propre' }
}

export const bondVocabulary: Vocabulary = {
  ...meaningsOf(breaks, (broke) => ({ read: flag({ broke }, { label: 'broke', value: broke }) })),
  ...meaningsOf(substrateKinds, (substrate) => ({ read: flag({ substrate }, { label: 'substrate', value: substrate }) })),
  wanted: { words: { en: 'wanted', es: 'exigid(o,a)', fr: 'exigé(,e)' }, read: number(slots.force, 'wantedN') },
  square: { words: { en: 'square', es: 'cuadro', fr: 'carré' }, read: number(slots.square, 'squareMm') },
  cured: { words: { en: 'cured', es: 'curad(o,a)', fr: 'durci(,e)' }, read: flag({ cured: true }), negated: negated({ cured: false }) },
  uncured: { words: { en: 'uncured', es: 'fresc(o,a)', fr: 'frais fraîche' }, read: flag({ cured: false }, { label: 'cured', value: false }) },
  photo
}

/** A bare number is the force it took. */
function other(walk: Walk): boolean {
  if (!atNumber(walk)) return false
  const quantity = takeQuantity(walk)
  putNumber(walk, { raw: quantity.raw, label: 'force' }, 'forceN', slots.force, slotValue(quantity, slots.force, walk.reader))
  return true
}

const lexicon = lexiconOf(bondVocabulary, other)

export const bond: Grammar = {
  command: 'bond',
  lexicon: () => lexicon,
  build: ({ fields, items }) => {
    if (items === 0) return { command: 'bond', bond: null }
    const { substrate = null, broke = null, cured = true } = fields
    return { command: 'bond', bond: { substrate, broke, cured, ...picked(fields, ['forceN', 'squareMm', 'wantedN', 'files']) } }
  }
}
