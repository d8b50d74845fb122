import { atEnd, find } from '../cursor.js'
import { missing } from '../refused.js'
import type { Said } from '../said.js'
import { contacts } from '../slots/contacts.js'
import { kit, kitOf } from '../slots/kit.js'
import { readingOf, readings } from '../slots/readings.js'
import { sky } from '../slots/sky.js'
import { startUp } from '../slots/start-up.js'
import { statementOf } from '../slots/statements.js'
import { substrate } from '../slots/substrate.js'
import { surfaceStates } from '../slots/surfaces.js'
import { lexiconOf } from '../vocabulary.js'
import type { Grammar, Vocabulary, Walk } from '../walk.js'

export const sprayVocabulary: Vocabulary = {
  ...readings,
  ...substrate,
  ...sky,
  ...surfaceStates({ dry: ['substrateDry', 'fleeceDry'], clean: ['substrateClean'] }),
  ...contacts,
  ...startUp,
  ...kit
}

const lexicon = lexiconOf(sprayVocabulary)
const overrides = lexiconOf({ override: { words: { en: 'override', es: 'forzar', fr: 'outrepasser' }, read: () => {} } })

/** `spray override REASON…`: the reason is free text, as it was typed. */
function override(walk: Walk): Said | null {
  const found = atEnd(walk) ? null : find(walk, overrides)
  if (!found) return null
  const reason = walk.text
    .slice(found.end)
    .replace(/^[\s:]+/, '')
    .trimEnd()
  if (reason === '') throw missing('reason')
  return { command: 'spray override', reason }
}

export const spray: Grammar = {
  command: 'spray',
  lexicon: () => lexicon,
  whole: override,
  build: ({ fields }) => ({ command: 'spray', reading: readingOf(fields), statement: statementOf(fields), kit: kitOf(fields) })
}
