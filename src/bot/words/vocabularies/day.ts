import { takeChunk, unknownWord } from '../cursor.js'
import type { Words } from '../forms.js'
import { Refused } from '../refused.js'
import type { DayPart, Said } from '../said.js'
import { readWeekday } from '../slots/site-values.js'
import { lexiconOf, meaningsOf } from '../vocabulary.js'
import { type Grammar, note, put, type Vocabulary, type Walk } from '../walk.js'
import { looksLikeDate, readDate, weekdayDate } from '../when.js'

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

/** A date or a day of the week, without a label. */
function other(walk: Walk): boolean {
  const before = walk.pos
  const typed = takeChunk(walk)
  const weekday = readWeekday(typed)
  if (weekday !== null) {
    put(walk, { raw: typed, label: 'date' }, 'weekday', weekday)
    return true
  }
  const date = readDate(typed, walk.reader)
  if (date === null) {
    walk.pos = before
    if (looksLikeDate(typed)) throw new Refused('bad-number', typed, { label: 'date', hint: 'date' })
    throw unknownWord(walk)
  }
  put(walk, { raw: typed, label: 'date' }, 'date', date)
  note(walk, 'date', date)
  return true
}

const lexicon = lexiconOf(vocabulary, other)

/** Of a weekday a record is of the last one, hours of the coming one. */
function dateOf({ fields: { date, weekday, dayPart }, reader }: Walk): string | null {
  if (weekday === undefined) return date ?? null
  const named = weekdayDate(weekday, dayPart === 'record' || dayPart === 'csv' ? 'last' : 'coming', reader)
  if (date !== undefined && date !== named) throw new Refused('duplicate', date, { label: 'date' })
  return named
}

function build(walk: Walk): Said {
  const { dayPart } = walk.fields
  const date = dateOf(walk)
  if (dayPart === undefined) return { command: 'day', date }
  if (dayPart !== 'start') return { command: 'day record', part: dayPart, date }
  if (date !== null) throw new Refused('inconsistent', date, { label: 'date', other: 'start' })
  return { command: 'day start' }
}

/** Without a date: today. */
export const day: Grammar = { command: 'day', lexicon: () => lexicon, build }
