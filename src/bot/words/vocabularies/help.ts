import { commandLexicon } from '../command-words.js'
import { find, rawAt } from '../cursor.js'
import { guideWords } from '../guide-words.js'
import { Refused } from '../refused.js'
import { lexiconOf, nearest } from '../vocabulary.js'
import type { Grammar, Vocabulary, Walk } from '../walk.js'
import { note, put } from '../walk.js'

/** The command that help is wanted about, with or without its slash. */
function other(walk: Walk): boolean {
  if (walk.text[walk.pos] === '/') walk.pos += 1
  const found = find(walk, commandLexicon)
  const raw = rawAt(walk.text, walk.pos)
  if (!found) throw new Refused('unknown-command', raw, { nearest: nearest(raw, commandLexicon.spelled, 3, 2, walk.reader.lang ?? null) })
  walk.pos = found.end
  put(walk, { raw: found.raw, label: 'command' }, 'about', found.label)
  note(walk, 'command', found.label)
  return true
}

const guide: Vocabulary = {
  guide: {
    words: guideWords,
    read: (walk, heard) => {
      put(walk, heard, 'about', 'guide')
      note(walk, 'command', 'guide')
    }
  }
}

const lexicon = lexiconOf(guide, other)

export const help: Grammar = { command: 'help', lexicon: () => lexicon, build: ({ fields }) => ({ command: 'help', about: fields.about ?? null }) }
