import { localDate } from '../../core/instant.js'
import { detailKinds } from '../../core/log/closing-data.js'
import { emptySite } from '../../core/log/states/site.js'
import { check } from '../closing/check.js'
import { type Done, type OnSite, told } from '../context.js'
import { iso } from '../json.js'
import { photosWanted } from '../photos/wanted.js'
import type { Said } from '../words/said.js'

/** The details that leak first: each kind looked at and good, bad, or not on this roof. */
export async function detail({ details: said, files }: Extract<Said, { command: 'detail' }>, on: OnSite, at: number): Promise<Done> {
  const { session } = on
  const subject = `day:${localDate(at, session.settings.zone)}`
  if (Object.keys(said).length > 0) await session.log('note', subject, { details: said, ...(files.length === 0 ? {} : { files }) }, at)
  const { details = {} } = (await session.latest('site')) ?? emptySite
  const rows = detailKinds.map((kind) => ({ kind, status: details[kind]?.value ?? null, at: iso(details[kind]?.at ?? null) }))
  const bad = rows.some(({ status }) => status === 'bad')
  const outcome = bad ? 'no-go' : rows.some(({ status }) => status === null) ? 'unknown' : 'go'
  return told({
    command: 'detail',
    outcome,
    findings: [check('details', outcome, bad ? 'mend:detail' : outcome === 'unknown' ? 'state:detail' : null, at)],
    numbers: { details: rows, ...photosWanted(subject, files) }
  })
}
