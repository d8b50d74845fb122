import { takeChunk, unknownWord } from '../cursor.js'
import { Refused } from '../refused.js'
import { lexiconOf } from '../vocabulary.js'
import { type Grammar, note, put, type Walk } from '../walk.js'
import { readDate } from '../when.js'

/** A date, without a label. */
function other(walk: Walk): boolean {
  const before = walk.pos
  const typed = takeChunk(walk)
  const date = readDate(typed, walk.reader)
  if (date === null) {
    walk.pos = before
    if (/^\d{4}-\d{2}-\d{2}$/.test(typed)) throw new Refused('bad-number', typed, { label: 'date' })
    throw unknownWord(walk)
  }
  put(walk, { raw: typed, label: 'date' }, 'date', date)
  note(walk, 'date', date)
  return true
}

const lexicon = lexiconOf({}, other)

/** Without a date: today. */
export const day: Grammar = { command: 'day', lexicon: () => lexicon, build: ({ fields }) => ({ command: 'day', date: fields.date ?? null }) }
