import { type Instant, toIso } from '../../core/instant.js'
import { due, type Slot } from '../../core/schedule.js'
import type { SiteKey, SiteSettings } from '../../core/site.js'
import type { Ask } from '../ask.js'
import type { KeptSite, Slots } from '../chat-ports.js'
import type { Ports } from '../context.js'
import { toJson } from '../json.js'
import { type DrainPorts, drain } from '../outbox.js'
import { type SiteView, StoreError } from '../ports.js'
import { remember } from '../session/remember.js'
import { openSession, settingsOf } from '../session/session.js'
import { type PostKind, postKinds, posts, postTimes } from './index.js'

export interface TickPorts extends Pick<Ports, 'store' | 'weather' | 'sheets' | 'report'> {
  readonly slots: Slots
  /** What sends; where there is no chat it only skips what is stale. */
  readonly drain: Omit<DrainPorts, 'channelOf'>
  /** Where the posts of a site go; null: nowhere yet. */
  channelOf(site: SiteKey, settings: SiteSettings): string | null
}

/** What one tick did, by slot key. */
export interface Ticked {
  readonly at: string
  readonly due: readonly string[]
  readonly queued: readonly string[]
  readonly sent: readonly string[]
  readonly skipped: readonly string[]
}

interface Site {
  readonly key: SiteKey
  readonly settings: SiteSettings
}

interface Turn extends Site {
  readonly slot: Slot
  readonly stale: boolean
}

/** One look at the clock: queues what is due at any site, once, and sends what is queued. Throws only where the store fails. */
export async function tick(now: Instant, ports: TickPorts): Promise<Ticked> {
  const sites = await openSites(await ports.slots.keptSites())
  const turns = await unclaimed(
    sites.flatMap((site) => turnsOf(site, now)),
    ports.slots
  )
  const queued: string[] = []
  for (const turn of turns) if ((await queueOrReport(turn, now, ports)) && !turn.stale) queued.push(turn.slot.key)
  const { sent, skipped } = await drain(now, { ...ports.drain, channelOf: (post) => channelOf(post, sites, ports) })
  return { at: toIso(now), due: turns.filter(({ stale }) => !stale).map(({ slot }) => slot.key), queued, sent, skipped }
}

async function openSites(kept: readonly KeptSite[]): Promise<readonly Site[]> {
  const sites: Site[] = []
  for (const { key, base, state } of kept) {
    const settings = await settingsOf({ base, state: async () => state })
    if (!settings.closed) sites.push({ key, settings })
  }
  return sites
}

function turnsOf({ key, settings }: Site, now: Instant): readonly Turn[] {
  const { zone, days, posts: wanted, closed } = settings
  const site = { workspace: key.workspace, name: key.site, zone, times: postTimes(settings), days, posts: wanted, closed }
  const slots = due(now, site, postKinds)
  const turn = (stale: boolean) => (slot: Slot) => ({ key, settings, slot, stale })
  return [...slots.due.map(turn(false)), ...slots.stale.map(turn(true))]
}

async function unclaimed(turns: readonly Turn[], slots: Slots): Promise<readonly Turn[]> {
  const left: Turn[] = []
  for (const workspace of new Set(turns.map(({ key }) => key.workspace))) {
    const own = turns.filter(({ key }) => key.workspace === workspace)
    const taken = await slots.claimed(workspace, own.map(claimOf))
    left.push(...own.filter((turn) => !taken.has(claimOf(turn))))
  }
  return left
}

function claimOf({ slot }: Turn): string {
  return `post/${slot.key}`
}

/** A site that fails must not silence the others: its slot is tried again at the next tick. */
async function queueOrReport(turn: Turn, now: Instant, ports: TickPorts): Promise<boolean> {
  try {
    return await queue(turn, now, ports)
  } catch (error) {
    if (error instanceof StoreError) throw error
    ports.report(error, { site: turn.key.site, post: turn.slot.key })
    return false
  }
}

/** Evaluates, claims and queues in one transaction. False when another instance was quicker, or the site is gone. */
async function queue(turn: Turn, now: Instant, ports: TickPorts): Promise<boolean> {
  const { key, settings, slot, stale } = turn
  const forecast = stale ? null : await ports.weather.at(settings, now)
  const appended = await ports.store.append(key, now, { key: claimOf(turn) }, async (view) => {
    // A stale one is kept without words, so that it is noted once.
    const payload = stale ? null : toJson(await speak(turn, view, now, forecast, ports))
    const post = { key: slot.key, site: key.site, kind: slot.kind, channel: ports.channelOf(key, settings), dueAt: slot.dueAt, payload }
    return { drafts: [], moved: [], keepsakes: [], posts: [post], reply: slot.key }
  })
  return appended?.kind === 'done'
}

async function speak(
  { slot, key }: Turn,
  view: SiteView,
  now: Instant,
  forecast: Awaited<ReturnType<Ports['weather']['at']>>,
  { sheets }: TickPorts
) {
  const session = await openSession(asker(key, now), view)
  const { settings } = session
  const sheet = sheets.byId(settings.limits) ?? sheets.byId('common-practice')
  if (sheet === null) throw new Error('the built-in limits sheet is missing')
  const memory = await remember(session)
  return posts[slot.kind as PostKind].speak({ site: key.site, settings, memory, forecast, sheet, date: slot.date, now })
}

/** The question that a post answers: nobody's, and nothing is logged. */
function asker({ workspace, site }: SiteKey, at: Instant): Ask {
  return {
    text: '',
    at,
    workspace,
    site,
    user: 'seamhand',
    role: 'crew',
    via: 'tick',
    lang: null,
    units: null,
    log: false,
    claim: null,
    channel: null
  }
}

function channelOf(post: { readonly workspace: string; readonly site: string }, sites: readonly Site[], ports: TickPorts): string | null {
  const site = sites.find(({ key }) => key.workspace === post.workspace && key.site === post.site)
  return site === undefined ? null : ports.channelOf(site.key, site.settings)
}
