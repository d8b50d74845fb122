import { atNumber, takeQuantity } from '../quantity.js'
import { slotValue } from '../slot.js'
import { slots } from '../slots/numbers.js'
import { readingOf, readings, substrateReading } from '../slots/readings.js'
import { sky } from '../slots/sky.js'
import { statementOf } from '../slots/statements.js'
import { putNumber } from '../take.js'
import { lexiconOf } from '../vocabulary.js'
import type { Grammar, Vocabulary, Walk } from '../walk.js'

export const airVocabulary: Vocabulary = { ...readings, ...substrateReading, ...sky }

/** A number right after the command is the air temperature: `air 20 rh 50`. */
function bareAir(walk: Walk): boolean {
  if (walk.items > 0 || !atNumber(walk)) return false
  const quantity = takeQuantity(walk)
  putNumber(walk, { raw: quantity.raw, label: 'air' }, 'airC', slots.air, slotValue(quantity, slots.air, walk.reader))
  walk.numbered = { raw: 'air', label: 'air' }
  return true
}

const lexicon = lexiconOf(airVocabulary, bareAir)

export const air: Grammar = {
  command: 'air',
  lexicon: () => lexicon,
  build: ({ fields }) => ({ command: 'air', reading: readingOf(fields), statement: statementOf(fields) })
}
