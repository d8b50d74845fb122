import type { FoamSign } from '../../../core/log/data.js'
import type { Words } from '../forms.js'
import { atNumber, takeQuantity } from '../quantity.js'
import { slotValue } from '../slot.js'
import { slots } from '../slots/numbers.js'
import { putNumber } from '../take.js'
import { lexiconOf, meaningsOf } from '../vocabulary.js'
import { type Grammar, note, type Vocabulary, type Walk } from '../walk.js'

const signs: Readonly<Record<FoamSign, Words>> = {
  dark: { en: 'dark', es: 'oscur(o,a)', fr: 'foncé(,e) sombre' },
  brittle: { en: 'brittle', es: 'quebradiz(o,a) frágil', fr: 'cassant(,e) friable' },
  soft: { en: 'soft', es: 'bland(o,a)', fr: 'mou molle' },
  tacky: { en: 'tacky', es: 'pegajos(o,a)', fr: 'collant(,e)' },
  streaks: { en: 'streak(,s)', es: 'veta(,s)', fr: 'strie(,s)' },
  even: { en: 'even', es: 'parej(o,a) uniforme', fr: 'régulier régulière uniforme' },
  flat: { en: 'flat', es: 'plan(o,a)', fr: 'plat(,e)' }
}

export const foamVocabulary: Vocabulary = meaningsOf(signs, (sign) => ({
  read: (walk) => {
    walk.fields.signs = [...new Set([...(walk.fields.signs ?? []), sign])]
    note(walk, 'sign', sign)
  }
}))

/** How many seconds until the foam gels. */
function other(walk: Walk): boolean {
  if (!atNumber(walk)) return false
  const quantity = takeQuantity(walk)
  putNumber(walk, { raw: quantity.raw, label: 'seconds' }, 'gelS', slots.gel, slotValue(quantity, slots.gel, walk.reader))
  return true
}

const lexicon = lexiconOf(foamVocabulary, other)

export const foam: Grammar = {
  command: 'foam',
  lexicon: () => lexicon,
  build: ({ fields }) => ({ command: 'foam', gelS: fields.gelS ?? null, signs: fields.signs ?? [] })
}
