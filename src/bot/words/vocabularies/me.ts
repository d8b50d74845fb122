import { speech } from '../slots/settings.js'
import { lexiconOf } from '../vocabulary.js'
import type { Grammar } from '../walk.js'

export const meVocabulary = speech

const lexicon = lexiconOf(meVocabulary)

/** Language and units of the person who asks; without either, what they are. */
export const me: Grammar = {
  command: 'me',
  lexicon: () => lexicon,
  build: ({ fields }) => ({ command: 'me', lang: fields.lang ?? null, units: fields.units ?? null })
}
