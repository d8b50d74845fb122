import { fileName } from '../../../core/file-name.js'
import { toIso } from '../../../core/instant.js'
import { texts } from '../../text/index.js'
import { dateOf } from '../../views/clock.js'
import type { How } from '../../views/how.js'
import type { RawFile } from '../document.js'
import type { Paper } from '../paper.js'
import { dayDocument, dayFrame, dayParts, footOf } from './day-document.js'
import { plainText } from './entry-words.js'
import type { Gathered, KeptPhoto } from './gathered.js'
import { logTable } from './log-table.js'

/** The record of a day as a document. */
export function dayRecord(on: Gathered, how: How): Paper<'record'> {
  const { record } = texts[how.lang]
  const alt = record.alt(plainText(on.site), dateOf(on.date, how) ?? on.date, on.lines.length)
  return { kind: 'record', name: `${on.site}-${on.date}.pdf`, alt, data: dayDocument(on, how) }
}

/** The log of a day as a table. */
export function dayTable(on: Gathered, how: How): Paper<'table'> {
  const { record } = texts[how.lang]
  const data = logTable(on, how)
  return {
    kind: 'table',
    name: `${on.site}-${on.date}.csv`,
    alt: record.altTable(plainText(on.site), dateOf(on.date, how) ?? on.date, data.rows.length),
    data
  }
}

/** All days of a site: one document with a chapter a day, one table of all, a table a day, photos, and the log as it was hashed. At least one day. */
export function packet(days: readonly Gathered[], how: How, log: string | null = null): Paper<'packet'> | null {
  const last = days.at(-1)
  if (last === undefined) return null
  const text = texts[how.lang]
  const { record } = text
  const span = `${dateOf(days[0]?.date ?? null, how)} – ${dateOf(last.date, how)}`
  const title = record.packet(plainText(last.site))
  const document: Paper<'record'> = {
    kind: 'record',
    name: `${last.site}.pdf`,
    alt: title,
    data: {
      ...dayFrame(last, how),
      title,
      subtitle: span,
      foot: footOf(last, span),
      parts: days.flatMap((day) => [
        { kind: 'heading' as const, text: `${record.columns.day}: ${dateOf(day.date, how) ?? day.date}` },
        ...dayParts(day, how, text)
      ])
    }
  }
  const tables = days.map((day) => dayTable(day, how))
  const all = { head: tables[0]?.data.head ?? [], rows: tables.flatMap(({ data }) => data.rows) }
  const table: Paper<'table'> = { kind: 'table', name: `${last.site}.csv`, alt: title, data: all }
  const raw = [...(log === null ? [] : [{ name: `${last.site}.jsonl`, text: log }]), ...days.flatMap(({ photos }) => photos.flatMap(photoFile))]
  return { kind: 'packet', name: `${last.site}.zip`, alt: title, data: { madeAt: toIso(last.now), papers: [document, table, ...tables], raw } }
}

/** Named by what it shows and its entry: `photo-void-3-demo-14.jpg`. What is not kept here is no file. */
export function photoFile({ subject, entry, mime, base64 }: KeptPhoto): readonly RawFile[] {
  if (base64 === null) return []
  return [{ name: fileName(`photo-${subject}-${entry}.${mime === 'image/png' ? 'png' : 'jpg'}`), base64 }]
}
