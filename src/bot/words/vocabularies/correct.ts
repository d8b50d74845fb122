import { parseEntryId } from '../../../core/log/entry.js'
import { unknownWord } from '../cursor.js'
import { missing } from '../refused.js'
import type { Said } from '../said.js'
import { lexiconOf } from '../vocabulary.js'
import { type Grammar, note, type Walk } from '../walk.js'

const lexicon = lexiconOf({})

/** `correct ID WORDS…`: the words are those of the entry's own command, which is known only once the entry is. */
function whole(walk: Walk): Said {
  const [typed = '', ...words] = walk.text.slice(walk.pos).trim().split(/\s+/)
  if (typed === '') throw missing('entry')
  const id = typed.toLowerCase()
  if (parseEntryId(id) === null) throw unknownWord(walk, typed)
  note(walk, 'entry', id)
  if (words.length === 0) throw missing('words')
  return { command: 'correct', id, words: words.join(' ') }
}

export const correct: Grammar = { command: 'correct', lexicon: () => lexicon, whole, build: whole }
