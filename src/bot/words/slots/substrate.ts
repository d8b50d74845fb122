import { atEnd } from '../cursor.js'
import type { Fields } from '../fields.js'
import { atNumber } from '../quantity.js'
import { missing } from '../refused.js'
import { flag, negated, number, state, takeChoice } from '../take.js'
import { choicesOf } from '../vocabulary.js'
import type { Heard, Meaning, Vocabulary, Walk } from '../walk.js'
import { slots } from './numbers.js'
import { substrateWords } from './readings.js'
import { type Surface, surfaceName, takeSurfaceState } from './surfaces.js'
import { failedWords, passedWords } from './verdicts.js'

const deck: Surface = { dry: ['substrateDry'], clean: ['substrateClean'] }
const readSubstrate = number(slots.substrate, 'substrateC')

/** `deck 18` is a reading, `deck dry` a statement of the substrate alone. */
function readDeck(walk: Walk, heard: Heard): void {
  if (!atEnd(walk) && !atNumber(walk) && takeSurfaceState(walk, heard, deck)) return
  readSubstrate(walk, heard)
}

const intakeWords = {
  none: { en: 'none', es: 'ningun(o,a,os,as)', fr: 'aucun(,e,s,es)' },
  shut: { en: 'shut', es: 'cerrad(o,a,os,as)', fr: 'fermé(,e,s,es)' },
  open: { en: 'open', es: 'abiert(o,a,os,as)', fr: 'ouvert(,e,s,es)' }
}
const intakeChoices = choicesOf([
  ['none', intakeWords.none],
  ['shut', intakeWords.shut],
  ['open', intakeWords.open]
] as const)
const verdicts = choicesOf([
  [true, passedWords],
  [false, failedWords]
] as const)

/** A word that has its meaning only after a label: alone, the label is what is missing. */
function onlyAfter(label: string): Meaning['read'] {
  return () => {
    throw missing(label)
  }
}

function readIntakes(walk: Walk, heard: Heard): void {
  const intakes = takeChoice(walk, heard, intakeChoices)
  state(walk, heard, { intakes }, intakes)
}

function readMoisture(walk: Walk, heard: Heard): void {
  const deckMoisturePassed = takeChoice(walk, heard, verdicts)
  state(walk, heard, { deckMoisturePassed }, deckMoisturePassed)
}

function sheetState(sheet: Exclude<Fields['sheet'], undefined>): Meaning['read'] {
  return flag({ sheet }, { label: 'sheet state', value: sheet })
}

/** Statements about what is sprayed, what lies on it and what is downwind. */
export const substrate = {
  substrate: { words: substrateWords, read: readDeck },
  fleece: { words: { en: 'fleece', es: 'fieltro vellón', fr: 'feutre' }, read: surfaceName({ dry: ['fleeceDry'], clean: [] }) },
  intakes: {
    words: { en: 'intake(,s)', es: 'toma(,s)', fr: 'prise(,s)' },
    read: readIntakes,
    negated: negated({ intakes: 'none' }, { label: 'intakes', value: 'none' })
  },
  none: { words: intakeWords.none, read: onlyAfter('intakes') },
  shut: { words: intakeWords.shut, read: onlyAfter('intakes') },
  open: { words: intakeWords.open, read: onlyAfter('intakes') },
  moisture: { words: { en: 'moisture', es: 'ensayo', fr: 'essai' }, read: readMoisture },
  passed: { words: passedWords, read: onlyAfter('moisture') },
  failed: { words: failedWords, read: onlyAfter('moisture') },
  rolled: { words: { en: 'rolled', es: 'enrollad(o,a,os,as)', fr: 'enroulé(,e,s,es)' }, read: sheetState('rolled') },
  unrolled: { words: { en: 'unrolled', es: 'desenrollad(o,a,os,as)', fr: 'déroulé(,e,s,es)' }, read: sheetState('unrolled') },
  relaxed: { words: { en: 'relaxed', es: 'reposad(o,a,os,as) relajad(o,a,os,as)', fr: 'détendu(,e,s,es)' }, read: sheetState('relaxed') }
} satisfies Vocabulary
