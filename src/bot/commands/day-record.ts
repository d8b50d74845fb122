import { localDate } from '../../core/instant.js'
import { counting } from '../../core/record/day-log.js'
import { type Beside, type Done, type OnSite, refuse, told } from '../context.js'
import { gatherDay } from '../papers/record/gather-day.js'
import { dayRecord, dayTable } from '../papers/record/record-papers.js'
import type { Said } from '../words/said.js'

/** `day record`, `day csv`: what was logged on a day, as a document or a table. Logs nothing. */
export async function dayRecordOf(said: Extract<Said, { command: 'day record' }>, on: OnSite, _at: number, beside: Beside): Promise<Done> {
  const { session, sheet, how } = on
  const date = said.date ?? localDate(session.now, session.settings.zone)
  const gathered = await gatherDay(session, sheet, beside.ports.store, date, how, said.part === 'record' ? 'record' : 'table')
  const { lines, day, anchor } = gathered
  if (lines.length === 0 && said.date !== null) return refuse('not-found', said.date, { label: 'date', hint: 'noEntries' })
  return told({
    command: 'day',
    numbers: {
      date,
      record: true,
      entries: lines.length,
      decisions: counting(lines, 'decision').length,
      overrides: counting(lines, 'override').length,
      coupons: counting(lines, 'coupon').length,
      voids: counting(lines, 'void').length,
      areaM2: day.areaM2,
      robotM: day.robotM,
      handM: day.handM,
      anchor
    },
    papers: [said.part === 'record' ? dayRecord(gathered, how) : dayTable(gathered, how)]
  })
}
