import { speech } from '../slots/settings.js'
import { flag, negated } from '../take.js'
import { lexiconOf } from '../vocabulary.js'
import type { Grammar, Vocabulary } from '../walk.js'

export const meVocabulary: Vocabulary = {
  ...speech,
  summary: { words: { en: 'summary', es: 'resumen', fr: 'résumé' }, read: flag({ summary: true }), negated: negated({ summary: false }) }
}

const lexicon = lexiconOf(meVocabulary)

/** Language, units and the summary of the person who asks; without any, what they are. */
export const me: Grammar = {
  command: 'me',
  lexicon: () => lexicon,
  build: ({ fields }) => ({ command: 'me', lang: fields.lang ?? null, units: fields.units ?? null, summary: fields.summary ?? null })
}
