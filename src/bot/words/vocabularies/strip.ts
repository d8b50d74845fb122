import { skip } from '../cursor.js'
import { matchAt } from '../match.js'
import { atNumber, takeQuantity } from '../quantity.js'
import { missing } from '../refused.js'
import { slotValue } from '../slot.js'
import { slots } from '../slots/numbers.js'
import { number, putNumber } from '../take.js'
import { lexiconOf } from '../vocabulary.js'
import { type Grammar, note, put, type Vocabulary, type Walk } from '../walk.js'

export const sheetsWords = { en: 'sheets sheet', es: 'lámina(,s)', fr: 'feuille(,s) lés' }

export const stripVocabulary: Vocabulary = {
  width: { words: { en: 'width', es: 'ancho', fr: 'largeur' }, read: number(slots.stripWidth, 'widthM') },
  gap: { words: { en: 'gap', es: 'hueco', fr: 'écart' }, read: number(slots.gap, 'gapMm') },
  off: { words: { en: 'off off-centre off-center', es: 'descentrad(o,a)', fr: 'décalage décalé(,e)' }, read: number(slots.off, 'offMm') },
  edge: { words: { en: 'edge', es: 'borde', fr: 'bord' }, read: number(slots.edge, 'edgeMm') },
  sheets: { words: sheetsWords, read: number(slots.sheets, 'sheets') },
  roll: { words: { en: 'roll', es: 'rollo', fr: 'rouleau' }, read: number(slots.roll, 'rollM') },
  picture: {
    words: { en: 'picture', es: 'dibujo imagen', fr: 'dessin image' },
    read: (walk, heard) => {
      put(walk, heard, 'picture', true)
      note(walk, 'picture', true)
    }
  },
  x: { words: { en: 'x ×', es: 'x', fr: 'x' }, read: number(slots.times, 'times') }
}

/** `x4`: how many; a bare number is the width of the sheet. */
function other(walk: Walk): boolean {
  skip(walk)
  if (!atNumber(walk) && !matchAt(/[x×]\d/iy, walk.text, walk.pos)) return false
  const times = !atNumber(walk)
  const start = walk.pos
  if (times) walk.pos += 1
  const quantity = takeQuantity(walk, times)
  const heard = { raw: walk.text.slice(start, walk.pos), label: times ? 'x' : 'width' }
  const slot = times ? slots.times : slots.stripWidth
  putNumber(walk, heard, times ? 'times' : 'widthM', slot, slotValue(quantity, slot, walk.reader))
  return true
}

const lexicon = lexiconOf(stripVocabulary, other)

export const strip: Grammar = {
  command: 'strip',
  lexicon: () => lexicon,
  build: ({ fields }) => {
    if (fields.widthM === undefined) throw missing('width')
    const { widthM, gapMm = null, offMm = null, edgeMm = null, sheets = null, rollM = null, times = null, picture } = fields
    const strip = { widthM, gapMm, offMm, edgeMm, sheets, rollM, times }
    return { command: 'strip', strip: picture ? { ...strip, picture } : strip }
  }
}
