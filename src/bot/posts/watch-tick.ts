import { type Instant, localDate, localTime } from '../../core/instant.js'
import type { Json } from '../../core/log/entry.js'
import { firstSaid, look, newsOf, type Said } from '../../core/plan/watch.js'
import { isWorkday } from '../../core/schedule.js'
import type { SiteKey, SiteSettings } from '../../core/site.js'
import type { ToldAlert } from '../../core/weather/alert.js'
import type { Slots } from '../chat-ports.js'
import type { Ports } from '../context.js'
import { toJson } from '../json.js'
import { type Post, StoreError } from '../ports.js'
import { howOf } from '../views/how.js'
import { readSite, weatherOn } from './on-site.js'
import type { Brief } from './summary.js'
import { speakWatch } from './watch.js'

/** A site that may be watched, and the seq of its newest entry. */
export interface Watched {
  readonly key: SiteKey
  readonly settings: SiteSettings
  readonly seq: number
}

/** When each site was last looked at, and at which entry. Only spares looks: what was said is in the store. */
export type Looked = Map<string, { readonly at: Instant; readonly seq: number }>

export interface WatchPorts extends Pick<Ports, 'store' | 'weather' | 'sheets' | 'report'> {
  readonly slots: Slots
  channelOf(site: SiteKey, settings: SiteSettings): string | null
  /** Null: every site is looked at. */
  readonly looked: Looked | null
  clock(): Instant
  /** Between one site and the next; false: look at no more. */
  goOn(): Promise<boolean>
}

/** What was said up to a claim: its number of the day, and the message that edits go to. */
interface Watch {
  readonly number: number
  readonly target: string | null
  readonly said: Said
}

/** Weather turns by the hour; what is logged is looked at in the same minute. */
const lookEveryS = 600
/** Looks of one tick take no longer than this, s: the next tick goes on with those that waited longest. */
const lookingS = 20
const mostADay = 99

/** Looks at the sites that are at work and queues what is new there. The slot keys that were queued. */
export async function watchSites(now: Instant, sites: readonly Watched[], ports: WatchPorts): Promise<readonly string[]> {
  const queued: string[] = []
  const began = ports.clock()
  for (const site of dueForLook(now, sites, ports.looked)) {
    if (ports.clock() - began >= lookingS || !(await ports.goOn())) break
    const key = await watchOrReport(site, now, ports)
    ports.looked?.set(nameOf(site), { at: now, seq: site.seq })
    if (key !== null) queued.push(key)
  }
  return queued
}

function dueForLook(now: Instant, sites: readonly Watched[], looked: Looked | null): readonly Watched[] {
  const atWork = sites.filter((site) => isWatched(site, now))
  if (looked === null) return atWork
  const lastAt = (site: Watched) => looked.get(nameOf(site))?.at ?? Number.NEGATIVE_INFINITY
  const due = atWork.filter((site) => now - lastAt(site) >= lookEveryS || now < lastAt(site) || looked.get(nameOf(site))?.seq !== site.seq)
  return [...due].sort((a, b) => lastAt(a) - lastAt(b))
}

/** Has a site looked at in the next tick, whenever it was last. */
export function lookAgain(looked: Looked, key: SiteKey): void {
  looked.delete(nameOf({ key }))
}

function nameOf({ key }: Pick<Watched, 'key'>): string {
  return `${key.workspace} ${key.site}`
}

/** Within the working hours of a working day; hours that end before they begin go over midnight. */
function isWatched({ settings }: Watched, now: Instant): boolean {
  const { zone, days, hours, posts, closed } = settings
  if (closed || !posts.includes('watch') || !isWorkday(localDate(now, zone), days)) return false
  const [time, from, to] = [localTime(now, zone), hours.slice(0, 5), hours.slice(6)]
  return from < to ? time >= from && time < to : time >= from || time < to
}

async function watchOrReport(site: Watched, now: Instant, ports: WatchPorts): Promise<string | null> {
  try {
    return await watch(site, now, ports)
  } catch (error) {
    if (error instanceof StoreError) throw error
    ports.report(error, { site: site.key.site, post: 'watch' })
    return null
  }
}

async function watch({ key, settings }: Watched, now: Instant, ports: WatchPorts): Promise<string | null> {
  const date = localDate(now, settings.zone)
  const slot = `${key.workspace}/${key.site}/watch/${date}`
  const before = (await ports.slots.lastClaim(key.workspace, `post/${slot}/`)) as unknown as Watch | null
  if (before !== null && before.number >= mostADay) return null
  const view = await ports.store.view(key)
  if (view === null) return null
  const on = await readSite({ key, date, now, ...(await weatherOn(ports.weather, settings, now)), wants: [] }, view, ports.sheets)
  const seen = look(on.memory, on.forecast, on.sheet, now, on.alerts)
  const told = before?.said ?? firstSaid(seen, seen.alerts.length === 0 ? [] : await toldInTheMorning(key, date, ports.slots))
  const { news, said } = newsOf(told, seen)
  if (before !== null && news === null && same(said, before.said)) return null
  const number = before === null ? 0 : before.number + 1
  const postKey = `${slot}/${String(number).padStart(2, '0')}`
  // A turn for the worse must be seen; anything else changes what stands there already.
  const edits = news?.worse === false ? (before?.target ?? null) : null
  const how = howOf(on.settings)
  const payload = news === null ? null : toJson({ ...speakWatch(on, seen, news, how), ...(edits === null ? {} : { edits }) })
  const post: Post = { key: postKey, site: key.site, kind: 'watch', channel: ports.channelOf(key, on.settings), dueAt: now, payload }
  const kept: Watch = { number, target: news === null ? (before?.target ?? null) : (edits ?? postKey), said }
  const batch = { drafts: [], moved: [], keepsakes: [], posts: payload === null ? [] : [post], reply: toJson(kept) as Json }
  const appended = await ports.store.append(key, now, { key: `post/${postKey}` }, async () => batch)
  return appended?.kind === 'done' && payload !== null ? postKey : null
}

/** Alerts that the morning post of the day told of. */
async function toldInTheMorning({ workspace, site }: SiteKey, date: string, slots: Slots): Promise<readonly ToldAlert[]> {
  const claim = `post/${workspace}/${site}/morning/${date}`
  const reply = (await slots.kept(workspace, [claim])).get(claim) as { readonly brief?: Brief | null } | null | undefined
  return reply?.brief?.alerts ?? []
}

function same(a: Said, b: Said): boolean {
  return JSON.stringify(toJson(a)) === JSON.stringify(toJson(b))
}
