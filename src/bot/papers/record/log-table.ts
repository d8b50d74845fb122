import { fromIso } from '../../../core/instant.js'
import { canonical } from '../../../core/log/canonical.js'
import { entryId, type JsonObject } from '../../../core/log/entry.js'
import { texts } from '../../text/index.js'
import { clock } from '../../views/clock.js'
import type { How } from '../../views/how.js'
import type { TableData } from '../document.js'
import { entryWords, plainText } from './entry-words.js'
import type { Gathered } from './gathered.js'
import { idOf, nameOf } from './sections.js'

/** The log of a day as a table: one row an entry, words beside the data as they were logged. */
export function logTable(on: Gathered, how: How): TableData {
  const text = texts[how.lang]
  const { record } = text
  const { columns } = record
  const head = [
    columns.entry,
    columns.day,
    columns.time,
    'at (UTC)',
    `${columns.logged} (UTC)`,
    columns.who,
    columns.via,
    columns.type,
    columns.about,
    columns.what,
    columns.notes,
    columns.data,
    columns.hash
  ]
  const rows = on.lines.map((line) => {
    const { entry, undoneBy, correctedBy } = line
    const at = fromIso(entry.at)
    return [
      idOf(line),
      on.date,
      at === null ? null : clock(at, at, how),
      entry.at,
      entry.loggedAt,
      nameOf(line, on),
      entry.via,
      record.types[entry.type],
      plainText(entry.subject),
      entryWords(entry.type, shown(line), how, text),
      [
        ...(undoneBy === null ? [] : [record.undone(entryId(on.site, undoneBy))]),
        ...(correctedBy === null ? [] : [record.corrected(entryId(on.site, correctedBy))])
      ].join(' · '),
      canonical(shown({ ...line, data: entry.data })),
      line.hash
    ]
  })
  return { head, rows }
}

/** Of a decision what it came to: its inputs, kilobytes of them, stay in the log itself. */
function shown({ entry, data }: Gathered['lines'][number]): JsonObject {
  if (entry.type !== 'decision') return data
  const { findings: _findings, inputs: _inputs, ...rest } = data
  return rest
}
