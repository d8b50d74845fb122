import type { Words } from './forms.js'
import { lexiconOf, meaningsOf } from './vocabulary.js'

/** What each command is called at the start of a message. */
export const commandWords = {
  spray: { en: 'spray', es: 'rociar pulverizar', fr: 'pulvériser projeter' },
  air: { en: 'air', es: 'aire', fr: 'air' },
  weld: { en: 'weld', es: 'soldar', fr: 'souder' },
  strip: { en: 'strip', es: 'tira banda', fr: 'bande' },
  sheets: { en: 'sheets', es: 'láminas', fr: 'feuilles lés' },
  probe: { en: 'probe', es: 'punzón repasar sonda sondear', fr: 'sonder sonde' },
  kit: { en: 'kit', es: 'juego', fr: 'trousse' },
  foam: { en: 'foam', es: 'espuma', fr: 'mousse' },
  laid: { en: 'laid', es: 'colocad(o,a,os,as) puest(o,a,os,as)', fr: 'posé(,e,s,es)' },
  bond: { en: 'bond', es: 'adherencia', fr: 'adhérence' },
  seal: { en: 'seal', es: 'cierre sello', fr: 'joint étanchéité' },
  fire: { en: 'fire', es: 'fuego', fr: 'feu' },
  detail: { en: 'detail(,s)', es: 'detalle(,s)', fr: 'détail(,s)' },
  punch: { en: 'punch', es: 'pendiente(,s)', fr: 'réserve(,s)' },
  day: { en: 'day', es: 'día', fr: 'jour' },
  site: { en: 'site', es: 'obra', fr: 'chantier' },
  start: { en: 'start', es: 'empezar comenzar inicio', fr: 'commencer démarrer début' },
  role: { en: 'role(,s)', es: 'rol(,es)', fr: 'rôle(,s)' },
  help: { en: 'help', es: 'ayuda', fr: 'aide' },
  me: { en: 'me', es: 'yo', fr: 'moi' },
  undo: { en: 'undo', es: 'deshacer', fr: 'annuler' },
  correct: { en: 'correct', es: 'corregir', fr: 'corriger' }
} as const satisfies Record<string, Words>

/** A void is no command, but what `probe` and its form are of. */
export const voidWords: Words = { en: 'void', es: 'falla', fr: 'défaut' }

/** The command words as a lexicon: the label of what is found is the command. */
export const commandLexicon = lexiconOf(meaningsOf(commandWords, () => ({ read: () => {} })))
