import type { SealMethod } from '../../../core/log/closing-data.js'
import { picked } from '../fields.js'
import type { Words } from '../forms.js'
import { atNumber, takeQuantity } from '../quantity.js'
import { Refused } from '../refused.js'
import { slotValue } from '../slot.js'
import { by } from '../slots/by.js'
import { slots } from '../slots/numbers.js'
import { photo } from '../slots/photo.js'
import { flag, negated, number, putNumber, state, takeChoice } from '../take.js'
import { choicesOf, lexiconOf } from '../vocabulary.js'
import type { Grammar, Vocabulary, Walk } from '../walk.js'

const methods: Readonly<Record<SealMethod, Words>> = {
  tape: { en: 'tape taped', es: 'cinta', fr: 'ruban bande' },
  foam: { en: 'foam', es: 'espuma', fr: 'mousse' },
  mastic: { en: 'mastic sealant', es: 'masilla sellador', fr: 'mastic' },
  welded: { en: 'welded', es: 'soldad(o,a)', fr: 'soudé(,e)' },
  weighed: { en: 'weighed weighted', es: 'lastrad(o,a)', fr: 'lesté(,e)' }
}

const drains = choicesOf([
  [true, { en: 'open clear', es: 'abiert(o,a,os,as) libre(,s)', fr: 'ouvert(,e,s,es) libre(,s)' }],
  [false, { en: 'shut blocked', es: 'cerrad(o,a,os,as) tapad(o,a,os,as)', fr: 'fermé(,e,s,es) bouché(,e,s,es)' }]
] as const)

export const sealVocabulary: Vocabulary = {
  edge: { words: { en: 'edge', es: 'borde', fr: 'bord' }, read: number(slots.openEdge, 'openEdgeM') },
  none: { words: { en: 'none', es: 'ningun(o,a)', fr: 'aucun(,e)' }, read: flag({ openEdgeM: 0 }, { label: 'edge', value: 'none' }) },
  ...Object.fromEntries(
    Object.entries(methods).map(([method, words]) => [
      method,
      { words, read: flag({ method: method as SealMethod }, { label: 'method', value: method }) }
    ])
  ),
  drains: {
    words: { en: 'drain(,s)', es: 'desagüe(,s)', fr: 'évacuation(,s)' },
    read: (walk, heard) => {
      const drainsOpen = takeChoice(walk, heard, drains)
      state(walk, heard, { drainsOpen }, drainsOpen ? 'open' : 'shut')
    }
  },
  rolled: {
    words: { en: 'rolled', es: 'enrollad(o,a,os,as)', fr: 'enroulé(,e,s,es)' },
    read: flag({ sheetsSafe: true }),
    negated: negated({ sheetsSafe: false })
  },
  loose: {
    words: { en: 'loose', es: 'suelt(o,a,os,as)', fr: 'volant(,e,s,es)' },
    read: flag({ sheetsSafe: false }),
    negated: negated({ sheetsSafe: true })
  },
  cutOff: { words: { en: 'cut', es: 'cortad(o,a)', fr: 'coupé(,e)' }, read: flag({ cut: true }) },
  wet: { words: { en: 'wet', es: 'mojad(o,a)', fr: 'mouillé(,e)' }, read: number(slots.wetFleece, 'wetM') },
  by,
  photo
}

/** A bare number is the length of the open edge. */
function other(walk: Walk): boolean {
  if (!atNumber(walk)) return false
  const quantity = takeQuantity(walk)
  putNumber(walk, { raw: quantity.raw, label: 'edge' }, 'openEdgeM', slots.openEdge, slotValue(quantity, slots.openEdge, walk.reader))
  return true
}

const lexicon = lexiconOf(sealVocabulary, other)

export const seal: Grammar = {
  command: 'seal',
  lexicon: () => lexicon,
  build: ({ fields }) => {
    if (fields.wetM !== undefined && !fields.cut) throw new Refused('missing', 'cut', { label: 'cutOff' })
    const said = picked(fields, ['openEdgeM', 'method', 'drainsOpen', 'sheetsSafe', 'cut', 'wetM', 'by', 'files'])
    return { command: 'seal', seal: said }
  }
}
