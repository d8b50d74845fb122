import type { Instant } from '../../../core/instant.js'
import { localDate } from '../../../core/instant.js'
import type { SiteKey } from '../../../core/site.js'
import type { Ask } from '../../ask.js'
import type { Sheets, SiteView } from '../../ports.js'
import { openSession, type Session } from '../../session/session.js'
import type { How } from '../../views/how.js'
import type { Paper } from '../paper.js'
import { gatherDay, type Kept } from './gather-day.js'
import { dayRecord, dayTable, packet } from './record-papers.js'

export type RecordFormat = 'pdf' | 'csv' | 'zip'

export interface ExportFrom {
  readonly view: SiteView
  readonly kept: Kept
  readonly sheets: Sheets
  readonly now: Instant
}

/**
 * What leaves the program of a site's log: the record of a day as PDF or table, by default of today; as zip the closeout packet of
 * these days. In the site's language and units. Null where there is nothing of those days.
 */
export async function exported(from: ExportFrom, format: RecordFormat, days: readonly string[]): Promise<Paper | null> {
  const session = await openSession(reader(from.view.key, from.now), from.view)
  const { settings } = session
  const how: How = { lang: settings.lang, units: settings.units, zone: settings.zone }
  if (format === 'zip') {
    const gathered = []
    for (const day of days) gathered.push(await ofDay(session, from, day, how))
    return packet(gathered, how)
  }
  const gathered = await ofDay(session, from, days[0] ?? localDate(from.now, settings.zone), how)
  if (gathered.lines.length === 0) return null
  return format === 'pdf' ? dayRecord(gathered, how) : dayTable(gathered, how)
}

function ofDay(session: Session, { kept, sheets }: ExportFrom, day: string, how: How) {
  const sheet = sheets.byId(session.settings.limits) ?? sheets.byId('common-practice')
  if (sheet === null) throw new Error('the built-in limits sheet is missing')
  return gatherDay(session, sheet, kept, day, how)
}

/** The question that an export answers: nobody's, and nothing is logged. */
function reader({ workspace, site }: SiteKey, at: Instant): Ask {
  const nobody = { user: 'seamhand', role: 'crew', via: 'ask', lang: null, units: null, log: false, claim: null, channel: null } as const
  return { text: '', at, workspace, site, ...nobody }
}
