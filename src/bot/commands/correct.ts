import { fromIso, localDate } from '../../core/instant.js'
import { type Entry, entryId, type JsonObject, parseEntryId } from '../../core/log/entry.js'
import { amendments } from '../../core/log/fold.js'
import { touches } from '../../core/log/subjects.js'
import { type Beside, type Done, type OnSite, refuse, told } from '../context.js'
import { withRatio } from '../decision/log-facts.js'
import { toJsonObject } from '../json.js'
import type { Kept } from '../ports.js'
import { readWords } from '../words/read.js'
import type { KitSaid, Said } from '../words/said.js'

/** Which command's words an entry of each type is corrected in; of the others, undo and a new entry tell more. */
const commandFor: Partial<Readonly<Record<Entry['type'], string>>> = { reading: 'spray', statement: 'spray', kit: 'kit', laid: 'laid' }

/**
 * `correct ID WORDS…`: puts other values in place of an entry's, on the record beside it. Its author on the same day, supervisors
 * always. The members stay the same, so that the correction touches what the entry touched.
 */
export async function correct(said: Extract<Said, { command: 'correct' }>, on: OnSite, _at: number, { ask }: Beside): Promise<Done> {
  const { session } = on
  const place = parseEntryId(said.id)
  const kept = place === null || place.site !== session.view.key.site ? null : await session.view.entry(place.seq)
  if (kept === null) return refuse('not-found', said.id, { label: 'entry' })
  const no = mayNot(kept, on)
  if (no !== null) return no
  const { entry, day } = kept
  const { undone, corrected } = amendments((await session.view.entriesOf(entry.subject)).map((other) => other.entry))
  if (undone.has(entry.seq)) return refuse('wrong-state', entryId(entry.site, entry.seq), { label: 'entry', state: 'undone' })
  const units = ask.units ?? session.settings.units
  const read = readWords(`${commandFor[entry.type]} ${said.words}`, { units, zone: session.settings.zone, now: session.now })
  if (!read.ok) return { ok: false, refusal: read.refusal }
  const change = changeOf(read.said, entry)
  const touched = touches(entry, day)
  const data = { ...entry.data, ...change }
  if (change === null || touches({ ...entry, data }, day).join() !== touched.join())
    return refuse('inconsistent', said.id, { label: 'entry', other: entry.type })
  const before = corrected.get(entry.seq)?.data ?? entry.data
  await session.logTouching('correction', entry.subject, { target: entry.seq, data }, touched)
  const was = Object.fromEntries(Object.keys(change).map((key) => [key, before[key] ?? null]))
  return told({ command: 'correct', numbers: { corrected: entryId(entry.site, entry.seq), was, now: change } })
}

function mayNot({ entry }: Kept, { session }: OnSite): Done | null {
  const id = entryId(entry.site, entry.seq)
  if (commandFor[entry.type] === undefined) return refuse('wrong-state', id, { label: 'entry', state: entry.type })
  const { zone } = session.settings
  const sameDay = localDate(fromIso(entry.loggedAt) ?? 0, zone) === localDate(session.now, zone)
  const own = entry.author === session.ask.user && sameDay
  return own || session.ask.role === 'supervisor' ? null : refuse('not-allowed', id, { who: 'supervisor' })
}

/** The members that were said, where the entry has them all; null otherwise. */
function changeOf(said: Said, { type, data }: Entry): JsonObject | null {
  const change = toJsonObject(membersOf(said, type, 'offRatio' in data))
  const keys = Object.keys(change)
  return keys.length > 0 && keys.every((key) => key in data) ? change : null
}

function membersOf(said: Said, type: Entry['type'], ratio: boolean): object {
  if (said.command === 'spray') {
    const empty = Object.keys(type === 'reading' ? said.statement : said.reading).length === 0 && said.kit === null
    return empty ? (type === 'reading' ? said.reading : said.statement) : {}
  }
  if (said.command === 'kit') return said.kit?.name == null ? kitMembers(said.kit?.data ?? {}, ratio) : {}
  return said.command === 'laid' ? said.laid : {}
}

/** An entry of an earlier version says nothing of the ratio, and its correction neither. */
function kitMembers(data: KitSaid['data'], ratio: boolean): object {
  return ratio ? withRatio(data) : data
}
