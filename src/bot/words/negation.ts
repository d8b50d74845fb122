import { lexiconOf } from './vocabulary.js'

/** The words that turn a flag round. */
export const negations = lexiconOf({ no: { words: { en: 'no not', es: 'no sin no_hay', fr: 'sans pas non pas_de' }, read: () => {} } })
