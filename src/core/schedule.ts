import { DateTime } from 'luxon'
import { daysOn, type Instant, localDate, localTime } from './instant.js'

/** A post later than this is of no use any more. */
export const staleAfterS = 3 * 3600

/** What the schedule of one site hangs on. */
export interface Scheduled {
  readonly workspace: string
  readonly name: string
  /** IANA. */
  readonly zone: string
  /** Local time HH:MM of each kind that is posted at a time of day. */
  readonly times: Readonly<Record<string, string>>
  /** ISO weekdays 1 (Monday) … 7 on which anything is posted. */
  readonly days: readonly number[]
  /** Kinds wanted. */
  readonly posts: readonly string[]
  readonly closed: boolean
}

/** One post of one kind on one local date; the key is its claim. */
export interface Slot {
  readonly key: string
  readonly kind: string
  readonly date: string
  readonly dueAt: Instant
}

export interface Due {
  /** To be posted now, unless claimed before. In order of time, then kind. */
  readonly due: readonly Slot[]
  /** Due more than 3 h ago: not to be posted, only noted. */
  readonly stale: readonly Slot[]
}

/** True when a post due then is too late now. */
export function isStale(dueAt: Instant, now: Instant): boolean {
  return !(now - dueAt <= staleAfterS)
}

/** Slots of the local date of `now` whose time has come. What was posted before is for the store to know. Pure. */
export function due(now: Instant, site: Scheduled, kinds: readonly string[]): Due {
  const date = localDate(now, site.zone)
  if (site.closed || !isWorkday(date, site.days)) return { due: [], stale: [] }
  const slots = slotsOn(date, site, kinds).filter(({ dueAt }) => dueAt <= now)
  return { due: slots.filter(({ dueAt }) => !isStale(dueAt, now)), stale: slots.filter(({ dueAt }) => isStale(dueAt, now)) }
}

/** The first slot after `now` of kinds wanted, within eight days; null where there is none. Pure. */
export function nextSlot(now: Instant, site: Scheduled, kinds: readonly string[]): Slot | null {
  if (site.closed) return null
  const today = localDate(now, site.zone)
  for (let ahead = 0; ahead <= 8; ahead += 1) {
    const date = daysOn(today, ahead)
    const first = isWorkday(date, site.days) ? slotsOn(date, site, kinds).find(({ dueAt }) => dueAt > now) : undefined
    if (first !== undefined) return first
  }
  return null
}

/** In order of time, then kind. */
function slotsOn(date: string, site: Scheduled, kinds: readonly string[]): readonly Slot[] {
  return kinds.flatMap((kind) => slotOf(site, kind, date) ?? []).sort((a, b) => a.dueAt - b.dueAt || (a.kind < b.kind ? -1 : 1))
}

function slotOf(site: Scheduled, kind: string, date: string): Slot | null {
  const time = site.times[kind]
  if (time === undefined || !site.posts.includes(kind)) return null
  const dueAt = firstInstantAt(date, time, site.zone)
  return dueAt === null ? null : { key: `${site.workspace}/${site.name}/${kind}/${date}`, kind, date, dueAt }
}

/**
 * The first instant of a local date (YYYY-MM-DD) at which the clocks of an IANA zone show a time (HH:MM) or later: where
 * clocks jump over it, the instant after the jump; where they show it twice, the first of the two. Null where that date
 * has no such instant, and for what is no date, time or zone.
 */
export function firstInstantAt(date: string, time: string, zone: string): Instant | null {
  const key = `${zone} ${date} ${time}`
  const known = found.get(key)
  if (known !== undefined) return known
  if (found.size >= mostKept) found.clear()
  const at = firstInstant(date, time, zone)
  found.set(key, at)
  return at
}

/** Thousands of sites ask for the same few instants every minute, and the calendar library is slow to ask. */
const mostKept = 2000
const found = new Map<string, Instant | null>()

function firstInstant(date: string, time: string, zone: string): Instant | null {
  // The same clock time as if the zone were UTC: less an offset it is an instant.
  const wall = DateTime.fromISO(`${date}T${time}`, { zone: 'utc' }).toSeconds()
  const [before, after] = [wall - daySeconds, wall + daySeconds].map((at) => offsetS(at, zone))
  if (!Number.isFinite(wall) || before === undefined || after === undefined || Number.isNaN(before + after)) return null
  const shown = [wall - before, wall - after].filter((at) => at + offsetS(at, zone) === wall)
  const at = shown.length > 0 ? Math.min(...shown) : jump(wall - Math.max(before, after), wall - Math.min(before, after), zone)
  return localDate(at, zone) === date ? at : null
}

const daySeconds = 86_400

/** Seconds that a zone is ahead of UTC at an instant; NaN for what is no zone. */
function offsetS(at: Instant, zone: string): number {
  return DateTime.fromSeconds(at, { zone }).offset * 60
}

/** The instant at which the offset changes between two instants: halved at most 18 times in a day. */
function jump(from: Instant, to: Instant, zone: string): Instant {
  const old = offsetS(from, zone)
  let [low, high] = [from, to]
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (offsetS(middle, zone) === old) low = middle
    else high = middle
  }
  return high
}

/** The first local date (YYYY-MM-DD) after another that is one of the ISO weekdays 1 (Monday) … 7; the next day where none is. */
export function nextWorkday(date: string, days: readonly number[]): string {
  const day = DateTime.fromISO(date, { zone: 'utc' })
  const ahead = [1, 2, 3, 4, 5, 6, 7].find((count) => days.includes(day.plus({ days: count }).weekday)) ?? 1
  return day.plus({ days: ahead }).toFormat('yyyy-MM-dd')
}

/** Is a local date (YYYY-MM-DD) one of the ISO weekdays 1 (Monday) … 7? */
export function isWorkday(date: string, days: readonly number[]): boolean {
  return days.includes(DateTime.fromISO(date, { zone: 'utc' }).weekday)
}

/** When the working hours (HH:MM-HH:MM) end that are under way at an instant, or else those that end next; null where that time is not to be had. */
export function workEndsAt(now: Instant, hours: string, zone: string): Instant | null {
  const [date, time, to] = [localDate(now, zone), localTime(now, zone), hours.slice(6)]
  return firstInstantAt(time < to ? date : daysOn(date, 1), to, zone)
}
