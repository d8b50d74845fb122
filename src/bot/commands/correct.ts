import { fromIso, localDate } from '../../core/instant.js'
import type { JsonObject } from '../../core/log/entry.js'
import { touches } from '../../core/log/subjects.js'
import { type Done, refuse } from '../context.js'
import type { Session } from '../session/session.js'

/**
 * Puts other values in place of an entry's: its author on the same day, supervisors always. The members stay the same,
 * so that the correction touches what the entry touched; anything else is an undo and a new entry. Null: done.
 */
export async function correct(session: Session, seq: number, data: JsonObject): Promise<Done | null> {
  const kept = await session.view.entry(seq)
  const id = `${session.view.key.site}-${seq}`
  if (kept === null) return refuse('not-found', id, { label: 'entry' })
  const { entry, day } = kept
  const { zone } = session.settings
  const sameDay = localDate(fromIso(entry.loggedAt) ?? 0, zone) === localDate(session.now, zone)
  if (session.ask.role !== 'supervisor' && !(entry.author === session.ask.user && sameDay)) return refuse('not-allowed', id, { who: 'supervisor' })
  const touched = touches(entry, day)
  const same =
    Object.keys(data).every((key) => key in entry.data) && touches({ ...entry, data: { ...entry.data, ...data } }, day).join() === touched.join()
  if (!same || ['undo', 'correction', 'decision', 'setting'].includes(entry.type))
    return refuse('wrong-state', id, { label: 'entry', state: entry.type })
  await session.logTouching('correction', entry.subject, { target: seq, data: { ...entry.data, ...data } }, touched)
  return null
}
