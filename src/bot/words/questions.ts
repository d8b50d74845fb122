import { atEnd, find } from './cursor.js'
import { lexiconOf } from './vocabulary.js'
import type { Walk } from './walk.js'

/**
 * The plain questions: `[filler…] verb [object] [filler…]`, then facts as in the command. Closed lists: a word that is on
 * none of them is not swallowed. A question about today or tomorrow is one about the hours of that day.
 */
function list(en: string, es: string, fr: string) {
  return lexiconOf({ filler: { words: { en, es, fr }, read: () => {} } })
}

const before = list(
  'can could may shall should do we i is it are to be ok okay fine good clear ready now still yet please',
  'podemos puedo puede pueden se podríamos podría es está posible ya ahora ok bien para vamos a',
  "on peut pouvons pouvons-nous peut-on puis-je je peux nous est-ce est-ce_que est-ce_qu'on qu'on que c'est bon pour de ok maintenant déjà"
)

const after = list('now yet already please ok okay right_now', 'ya ahora por_favor ok', "maintenant déjà svp s'il_vous_plaît ok")

const days = list('today tomorrow', 'hoy mañana', "aujourd'hui demain")

const objects = list('the sheet sheets', 'la lámina las láminas', 'la les feuille feuilles lés')

const verbs = lexiconOf({
  spray: { words: { en: 'spray spraying glue gluing', es: 'rociar pulverizar pegar', fr: 'pulvériser projeter coller' }, read: () => {} },
  weld: { words: { en: 'weld welding', es: 'soldar', fr: 'souder' }, read: () => {} },
  air: { words: { en: 'lay laying unroll unrolling', es: 'colocar desenrollar', fr: 'poser dérouler' }, read: () => {} }
})

/** Every list, for the check that no filler is a word of a command that may be asked about. */
export const questionLists = { before, after, objects, verbs }

function over(walk: Walk, lexicon: typeof before): void {
  for (let found = atEnd(walk) ? null : find(walk, lexicon); found; found = atEnd(walk) ? null : find(walk, lexicon)) walk.pos = found.end
}

/** Over the fillers behind a command that may be asked: `spray now?`. */
export function skipFillers(walk: Walk, command: string): void {
  if (command === 'spray' || command === 'weld' || command === 'air') over(walk, after)
}

/** The command that a plain question asks for; null, and nothing moved, when the message does not begin as one. */
export function readQuestion(walk: Walk): string | null {
  const start = walk.pos
  over(walk, before)
  const verb = atEnd(walk) ? null : find(walk, verbs)
  if (!verb) {
    walk.pos = start
    return null
  }
  walk.pos = verb.end
  if (verb.label === 'air') over(walk, objects)
  skipFillers(walk, verb.label)
  return !atEnd(walk) && find(walk, days) ? 'day' : verb.label
}
