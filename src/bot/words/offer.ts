import { commandWords, voidWords } from './command-words.js'
import { fold } from './fold.js'
import { allForms } from './forms.js'
import { mendedByWords } from './refused.js'
import type { Reading } from './said.js'

/** Words between a thing and what is said of it: `void 1 is fixed`. */
const copulas = new Set(['is', 'are', 'was', 'at', 'its', 'esta', 'estan', 'es', 'est', 'sont', 'ete'])
const kitNames = new Set(allForms(commandWords.kit).map(fold))
const voidNames = new Set(allForms(voidWords).map(fold))
/** Commands whose words people say without the command: facts of the weather first. */
const untold = ['air', 'kit', 'spray', 'weld', 'probe', 'laid'] as const
const longest = 200

/** The message without its little words, with a void and a kit named as their commands name them. */
function plainer(text: string): string {
  const words = text.split(/\s+/).filter((word) => !copulas.has(fold(word)))
  const [first = '', second = '', ...rest] = words
  const counts = /^\d{1,3}$/.test(second)
  if (counts && kitNames.has(fold(first)) && rest.length > 0) return [first, `K${second}`, ...rest].join(' ')
  return counts && voidNames.has(fold(first)) ? ['probe', second, ...rest].join(' ') : words.join(' ')
}

/** Something said twice is mended by another order of the words too. */
const mended: ReadonlySet<string> = new Set([...mendedByWords, 'duplicate'])

/**
 * A refused message with the one that was probably meant, where that reads: nothing is logged, it only is offered. `again` reads words as
 * a message.
 */
export function withOffer(text: string, read: Reading, again: (message: string) => Reading): Reading {
  const said = text.trim().replace(/^\//, '')
  if (read.ok || !mended.has(read.refusal.code) || said.length > longest || /[?¿]/.test(said)) return read
  const plain = plainer(said)
  const untoldOnes = read.command === null && /\d/.test(said) ? untold.flatMap((command) => [`${command} ${said}`, `${command} ${plain}`]) : []
  const offer = [...(plain === said ? [] : [plain]), ...untoldOnes].find((message) => again(message).ok)
  return offer === undefined ? read : { ...read, refusal: { ...read.refusal, detail: { ...read.refusal.detail, offer } } }
}
