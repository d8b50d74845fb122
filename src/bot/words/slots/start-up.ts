import { flag, negated } from '../take.js'
import type { Vocabulary } from '../walk.js'

export const nozzleWords = { en: 'nozzle(,s)', es: 'boquilla(,s)', fr: 'buse(,s)' }

/** The start-up of the spray set, in its order. */
export const startUp = {
  start: { words: { en: 'start', es: 'inicio', fr: 'début' }, read: flag({ start: true }) },
  tight: { words: { en: 'tight', es: 'apretad(o,a,os,as)', fr: 'serré(,e,s,es)' }, read: flag({ tight: true }), negated: negated({ tight: false }) },
  leak: {
    words: { en: 'leak(,s)', es: 'fuga(,s)', fr: 'fuite(,s)' },
    read: flag({ tight: false }, { label: 'tight', value: false }),
    negated: negated({ tight: true }, { label: 'tight', value: true })
  },
  purged: {
    words: { en: 'purged', es: 'purgad(o,a,os,as)', fr: 'purgé(,e,s,es)' },
    read: flag({ purged: true }),
    negated: negated({ purged: false })
  },
  nozzle: { words: nozzleWords, read: flag({ nozzle: true }), negated: negated({ nozzle: false }) },
  tested: {
    words: { en: 'tested', es: 'probad(o,a,os,as)', fr: 'testé(,e,s,es)' },
    read: flag({ tested: true }),
    negated: negated({ tested: false })
  }
} satisfies Vocabulary
