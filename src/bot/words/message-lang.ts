import { type Lang, langs } from '../answer.js'
import { commandLexicon } from './command-words.js'
import { fold } from './fold.js'
import type { Walk } from './walk.js'

/** What a message speaks: the person's language, unless more of its words are those of another one. Null: nobody's. */
export function langOf(walk: Walk): Lang | null {
  const own = walk.reader.lang
  if (own === undefined) return null
  const words = new Set(fold(walk.text.slice(0, 2000)).split(/[^a-z]+/))
  const known = [commandLexicon, walk.lexicon].flatMap(({ spelled }) => spelled.filter(({ folded }) => words.has(folded)))
  const count = (lang: Lang) => known.filter((one) => one.langs.has(lang)).length
  return langs.reduce<Lang>((best, lang) => (count(lang) > count(best) ? lang : best), own)
}
