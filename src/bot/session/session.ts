import { type Instant, localDate, toIso } from '../../core/instant.js'
import { type EntryType, entryId, type JsonObject } from '../../core/log/entry.js'
import { addLast, type Folded, type Kind, refold, type States, stepsOf } from '../../core/log/fold.js'
import type { Step } from '../../core/log/states/noted.js'
import { emptySite } from '../../core/log/states/site.js'
import { touches } from '../../core/log/subjects.js'
import type { SiteSettings } from '../../core/site.js'
import type { Ask } from '../ask.js'
import type { Batch, SiteView, StateRow, ToKeep } from '../ports.js'
import { stateOf } from './states.js'

interface Pending {
  readonly seq: number
  readonly at: string
  readonly type: EntryType
  readonly subject: string
  readonly data: JsonObject
  readonly day: string
  readonly touches: readonly string[]
}

/** One question's work on one site: reads states, collects what is to be logged, and sees at once what it has collected. */
export interface Session {
  readonly ask: Ask
  readonly view: SiteView
  readonly now: Instant
  readonly settings: SiteSettings
  /** State of a subject as of `now`, with what this session has collected; null when nothing touches it. */
  state(subject: 'site'): Promise<States['site'] | null>
  state<K extends Exclude<Kind, 'site'>>(subject: `${K}:${string}`): Promise<States[K] | null>
  /** As `state`, whatever its clock says: where the clock ran back, what was logged ahead of it counts too. */
  latest(subject: 'site'): Promise<States['site'] | null>
  latest<K extends Exclude<Kind, 'site'>>(subject: `${K}:${string}`): Promise<States[K] | null>
  /** The entries of a subject as of `now`, undone ones left out and corrections applied, with what this session has collected. */
  steps(subject: string): Promise<readonly Step[]>
  /** The same session with the states of an instant not later than now: for an entry that is dated back. */
  asOf(at: Instant): Session
  /** Collects an entry; its id. Nothing is written before the whole answer stands. */
  log(type: EntryType, subject: string, data: object, at?: Instant): Promise<string>
  /** As `log`, for entries that act on another one's subjects (undo, correction). */
  logTouching(type: EntryType, subject: string, data: object, touched: readonly string[]): Promise<string>
  keep(keepsake: ToKeep): void
  /** Ids collected so far. */
  ids(): readonly string[]
  batch<Reply>(reply: Reply): Batch<Reply>
}

/** Settings of a site: what it was made with, and every setting logged since. */
export async function settingsOf(view: Pick<SiteView, 'base' | 'state'>): Promise<SiteSettings> {
  return { ...view.base, ...((await stateOf(view, 'site')) ?? emptySite).settings }
}

export async function openSession(ask: Ask, view: SiteView): Promise<Session> {
  const { zone } = view.base
  const state = readOnce(view, ['site', `day:${localDate(ask.at, zone)}`, `day:${localDate(ask.at - 86_400, zone)}`])
  const settings = await settingsOf({ base: view.base, state })
  const now = ask.at
  const pending: Pending[] = []
  const keepsakes: ToKeep[] = []
  const moved = new Map<string, Folded | null>()

  async function whole(subject: string): Promise<Folded | null> {
    return moved.has(subject) ? (moved.get(subject) ?? null) : (((await state(subject))?.state ?? null) as Folded | null)
  }

  const everyEntry = (subject: string) => entriesWith(view, pending, subject)

  async function stateAt(subject: string, until: Instant) {
    const folded = await whole(subject)
    if (folded === null || folded.lastAt <= until) return folded?.is ?? null
    return refold(subject, await everyEntry(subject), until)?.is ?? null
  }

  async function add(type: EntryType, subject: string, data: object, at: Instant, touched: readonly string[] | null): Promise<string> {
    const seq = view.head.seq + pending.length + 1
    const day = localDate(at, settings.zone)
    const bare = { seq, at: toIso(at), type, subject, data: data as JsonObject }
    const entry: Pending = { ...bare, day, touches: touched ?? touches(bare, day) }
    const before = await Promise.all(entry.touches.map(whole))
    pending.push(entry)
    for (const [i, each] of entry.touches.entries()) {
      moved.set(each, addLast(each, before[i] ?? null, entry) ?? refold(each, await everyEntry(each)))
    }
    return entryId(view.key.site, seq)
  }

  const stepsAt = async (subject: string, until: Instant) => stepsOf(await everyEntry(subject), until)
  const upTo = (until: Instant) => atInstant(until, stateAt, stepsAt)
  const session: Session = {
    ask,
    view,
    settings,
    ...upTo(now),
    latest: (async (subject: string) => (await whole(subject))?.is ?? null) as Session['latest'],
    asOf: (at) => ({ ...session, ...upTo(Math.min(at, now)) }),
    log: (type, subject, data, at = now) => add(type, subject, data, at, null),
    logTouching: (type, subject, data, touched) => add(type, subject, data, now, touched),
    keep: (keepsake) => void keepsakes.push(keepsake),
    ids: () => pending.map(({ seq }) => entryId(view.key.site, seq)),
    batch: (reply) => ({
      drafts: pending.map(({ seq: _seq, ...draft }) => ({ ...draft, author: ask.user, via: ask.via })),
      moved: [...moved].map(([subject, folded]) => ({ subject, state: folded as never })),
      keepsakes,
      posts: [],
      reply,
      ...channelNow(view, settings, moved.get('site'))
    })
  }
  return session
}

/** What a session sees of the log as of an instant. */
function atInstant(
  now: Instant,
  state: (subject: string, until: Instant) => Promise<unknown>,
  steps: (subject: string, until: Instant) => Promise<readonly Step[]>
): Pick<Session, 'now' | 'state' | 'steps'> {
  return { now, state: ((subject: string) => state(subject, now)) as Session['state'], steps: (subject) => steps(subject, now) }
}

async function entriesWith(view: SiteView, pending: readonly Pending[], subject: string) {
  const kept = await view.entriesOf(subject)
  return [...kept.map(({ entry }) => entry), ...pending.filter((entry) => entry.touches.includes(subject))]
}

/** Inside one transaction a row stays as it was read. What nearly every question asks for is read `together`. */
function readOnce(view: SiteView, together: readonly string[]): SiteView['state'] {
  const rows = new Map<string, Promise<StateRow | null>>()
  // Awaited at once: the settings are asked for first, and nothing fails unseen.
  const read = view.statesAt(together)
  const ofThose = async (subject: string) => (await read).find((row) => row.subject === subject) ?? null
  return (subject) => {
    const row = rows.get(subject) ?? (together.includes(subject) ? ofThose(subject) : view.state(subject))
    rows.set(subject, row)
    return row
  }
}

/** The channel, where an entry of this session (a setting, an undo of one) changed it. */
function channelNow(view: SiteView, before: SiteSettings, site: Folded | null | undefined): { channel?: string | null } {
  if (!site) return {}
  const { channel } = { ...view.base, ...(site as unknown as Folded<States['site']>).is?.settings }
  return channel === before.channel ? {} : { channel }
}
