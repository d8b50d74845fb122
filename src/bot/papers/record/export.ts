import type { Instant } from '../../../core/instant.js'
import { localDate } from '../../../core/instant.js'
import type { Lang } from '../../answer.js'
import type { Sheets, SiteView } from '../../ports.js'
import { nobodyAsks } from '../../session/nobody.js'
import { openSession, type Session } from '../../session/session.js'
import { sheetOf } from '../../sheet-of.js'
import { type How, howOf } from '../../views/how.js'
import type { Paper } from '../paper.js'
import { type GatherFor, gatherDay, type Kept } from './gather-day.js'
import { dayRecord, dayTable, packet } from './record-papers.js'

export type RecordFormat = 'pdf' | 'csv' | 'zip'

export interface ExportFrom {
  readonly view: SiteView
  readonly kept: Kept
  readonly sheets: Sheets
  readonly now: Instant
  /** Language of what leaves; null: the site's. */
  readonly lang: Lang | null
  /** For a packet: the lines of the log as they were hashed. */
  readonly log?: string
}

/**
 * What leaves the program of a site's log: the record of a day as PDF or table, by default of today; as zip the closeout packet of
 * these days. In the site's units, and in its language where none is asked for. Null where there is nothing of those days.
 */
export async function exported(from: ExportFrom, format: RecordFormat, days: readonly string[]): Promise<Paper | null> {
  const session = await openSession(nobodyAsks(from.view.key, from.now, 'ask'), from.view)
  const { settings } = session
  const how = { ...howOf(settings), lang: from.lang ?? settings.lang }
  if (format === 'zip') {
    const gathered = []
    for (const day of days) gathered.push(await ofDay(session, from, day, how, 'record'))
    return packet(gathered, how, from.log ?? null)
  }
  const gathered = await ofDay(session, from, days[0] ?? localDate(from.now, settings.zone), how, format === 'csv' ? 'table' : 'record')
  if (gathered.lines.length === 0) return null
  return format === 'pdf' ? dayRecord(gathered, how) : dayTable(gathered, how)
}

function ofDay(session: Session, { kept, sheets }: ExportFrom, day: string, how: How, what: GatherFor) {
  return gatherDay(session, sheetOf(session.settings.limits, sheets), kept, day, how, what)
}
