import { fromIso } from '../../core/instant.js'
import { parseEntryId } from '../../core/log/entry.js'
import { touches } from '../../core/log/subjects.js'
import { type Done, type OnSite, refuse, told } from '../context.js'
import type { Kept } from '../ports.js'
import type { Said } from '../words/said.js'

/** How long after it was logged an author may take an entry back. */
export const undoS = 600

const never: ReadonlySet<string> = new Set(['decision', 'undo', 'correction'])
/** Nothing is built on them: a photo goes with what it shows. */
const beside: ReadonlySet<string> = new Set([...never, 'photo'])

/** Takes back what its author logged within ten minutes: named entries, or all of the author's last message. */
export async function undo(said: Extract<Said, { command: 'undo' }>, on: OnSite): Promise<Done> {
  const found = said.ids.length === 0 ? await lastMessage(on) : await named(said.ids, on)
  if (!Array.isArray(found)) return found as Done
  const targets = found as readonly Kept[]
  for (const target of targets) {
    const no = await refusal(target, on)
    if (no !== null) return no
  }
  for (const { entry, day } of targets) {
    await on.session.logTouching('undo', entry.subject, { target: entry.seq }, touches(entry, day))
  }
  const taken = targets.map(({ entry: { type, subject, data } }) => ({ type, subject, data }))
  return told({ command: 'undo', numbers: { undone: targets.map(({ entry }) => `${entry.site}-${entry.seq}`), taken } })
}

async function named(ids: readonly string[], { session }: OnSite): Promise<readonly Kept[] | Done> {
  const targets: Kept[] = []
  for (const id of ids) {
    const place = parseEntryId(id.toLowerCase())
    const kept = place === null || place.site !== session.view.key.site ? null : await session.view.entry(place.seq)
    if (kept === null) return refuse('not-found', id, { label: 'entry' })
    targets.push(kept)
  }
  return targets
}

/** Everything that the author's last message logged and that can be undone. */
async function lastMessage({ session }: OnSite): Promise<readonly Kept[] | Done> {
  const latest = await session.view.latestOf(session.ask.user, 50)
  const undone = new Set(latest.flatMap(({ entry }) => (entry.type === 'undo' ? [Number(entry.data.target)] : [])))
  const open = latest.filter(({ entry }) => !never.has(entry.type) && !undone.has(entry.seq))
  const batch = open[0]?.batch
  if (batch === undefined) return refuse('not-found', null, { label: 'entry' })
  return open.filter((kept) => kept.batch === batch)
}

async function refusal({ entry }: Kept, { session }: OnSite): Promise<Done | null> {
  const id = `${entry.site}-${entry.seq}`
  if (never.has(entry.type)) return refuse('wrong-state', id, { label: 'entry', state: entry.type })
  if (entry.author !== session.ask.user) return refuse('not-allowed', id, { who: 'author' })
  if (session.now - (fromIso(entry.loggedAt) ?? 0) > undoS) return refuse('wrong-state', id, { label: 'entry', state: 'too-late' })
  const others = await session.view.entriesOf(entry.subject)
  const undone = new Set(others.flatMap((other) => (other.entry.type === 'undo' ? [Number(other.entry.data.target)] : [])))
  if (undone.has(entry.seq)) return refuse('wrong-state', id, { label: 'entry', state: 'undone' })
  const stands =
    (entry.subject.startsWith('void:') || entry.subject.startsWith('punch:')) &&
    entry.type !== 'photo' &&
    others.some((other) => other.entry.seq > entry.seq && !beside.has(other.entry.type) && !undone.has(other.entry.seq))
  return stands ? refuse('wrong-state', id, { label: 'entry', state: 'built-on' }) : null
}
