import { takeChunk, unknownWord } from '../cursor.js'
import type { Words } from '../forms.js'
import { Refused } from '../refused.js'
import type { DayPart, Said } from '../said.js'
import { lexiconOf, meaningsOf } from '../vocabulary.js'
import { type Grammar, note, put, type Vocabulary, type Walk } from '../walk.js'
import { readDate } from '../when.js'

const parts: Readonly<Record<DayPart, Words>> = {
  start: { en: 'start', es: 'inicio', fr: 'début' },
  record: { en: 'record report', es: 'registro informe reporte', fr: 'relevé registre rapport' },
  csv: { en: 'csv', es: '', fr: '' }
}

const vocabulary: Vocabulary = meaningsOf(parts, (part) => ({
  read: (walk, heard) => {
    put(walk, heard, 'dayPart', part)
    note(walk, part, true)
  }
}))

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

const lexicon = lexiconOf(vocabulary, other)

function build({ fields }: Walk): Said {
  const { dayPart, date = null } = fields
  if (dayPart === undefined) return { command: 'day', date }
  if (dayPart !== 'start') return { command: 'day record', part: dayPart, date }
  if (date !== null) throw new Refused('inconsistent', date, { label: 'date', other: 'start' })
  return { command: 'day start' }
}

/** Without a date: today. */
export const day: Grammar = { command: 'day', lexicon: () => lexicon, build }
