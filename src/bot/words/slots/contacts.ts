import { flag, negated } from '../take.js'
import type { Vocabulary } from '../walk.js'

/** What the sheet touches, and the thumb test of foam under a fresh sheet. */
export const contacts = {
  compatible: { words: { en: 'compatible', es: 'compatible(,s)', fr: 'compatible(,s)' }, read: flag({ compatibility: 'compatible' }) },
  contact: {
    words: { en: 'contact bitumen', es: 'contacto betún', fr: 'contact bitume' },
    read: flag({ compatibility: 'contact' }),
    negated: negated({ compatibility: 'compatible' }, { label: 'compatible', value: true })
  },
  ask: {
    words: {
      en: 'ask ask_maker ask_the_maker',
      es: 'consultar consultar_fabricante consultar_al_fabricante',
      fr: 'demander demander_fabricant demander_au_fabricant'
    },
    read: flag({ compatibility: 'ask' })
  },
  thumb: { words: { en: 'thumb thumb_test', es: 'pulgar', fr: 'pouce' }, read: flag({ thumbTest: true }) }
} satisfies Vocabulary
