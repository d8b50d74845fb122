import { find, rawAt } from '../cursor.js'
import { matchAt } from '../match.js'
import { nameNotUnit } from '../names.js'
import { atNumber } from '../quantity.js'
import { missing } from '../refused.js'
import { contacts } from '../slots/contacts.js'
import { lapWords } from '../slots/lap.js'
import { bareVolts, power } from '../slots/power.js'
import { readingOf, readings, substrateReading } from '../slots/readings.js'
import { sky } from '../slots/sky.js'
import { statementOf } from '../slots/statements.js'
import { surfaceName, surfaceStates } from '../slots/surfaces.js'
import { lexiconOf } from '../vocabulary.js'
import type { Grammar, Lexicon, Vocabulary, Walk } from '../walk.js'
import { saidOfWelder, welderLexicon } from './welder.js'

const lap = { dry: ['lapDry'], clean: ['lapClean'] } as const

export const weldVocabulary: Vocabulary = {
  ...readings,
  ...substrateReading,
  ...sky,
  ...surfaceStates(lap),
  lap: { words: lapWords, read: surfaceName(lap) },
  ...contacts,
  ...power
}

/** A word or number that only speaks of a welder, and no welder named. */
function otherFact(walk: Walk): boolean {
  if (atNumber(walk) ? bareVolts(walk) : false) return true
  if ((walk.items === 0 && atNumber(walk)) || find(walk, welderLexicon)) throw missing('welder')
  return false
}

const factLexicon = lexiconOf(weldVocabulary, otherFact)

/** Whether a welder is named anywhere: `robot`, `hand`, or letters with a digit. */
function namesWelder(walk: Walk): boolean {
  for (let pos = walk.pos; pos < walk.text.length; pos += 1) {
    pos += matchAt(/[^\p{L}\p{N}@]*/uy, walk.text, pos)?.[0].length ?? 0
    if (walk.text[pos] === '@') {
      pos += rawAt(walk.text, pos).length
      continue
    }
    const word = rawAt(walk.text, pos)
    const known = welderLexicon.index.get(word.toLowerCase())?.label
    if (known === 'robot' || known === 'hand' || nameNotUnit(word) !== null) return true
    pos += word.length
  }
  return false
}

function lexicon(walk: Walk): Lexicon {
  return namesWelder(walk) ? welderLexicon : factLexicon
}

export const weld: Grammar = {
  command: 'weld',
  lexicon,
  build: (walk) => {
    if (walk.lexicon === welderLexicon) return saidOfWelder(walk.fields)
    return { command: 'weld', reading: readingOf(walk.fields), statement: statementOf(walk.fields) }
  }
}
