import { DateTime } from 'luxon'

/** Whole seconds since 1970-01-01T00:00:00Z. The core has no clock: an instant always comes in as an argument. */
export type Instant = number

/** ISO 8601 in UTC, whole seconds, `Z`: the only form in which an instant leaves the program. */
export function toIso(at: Instant): string {
  if (at !== lastAt) [lastAt, lastIso] = [at, isoOf(at)]
  return lastIso
}

/** The last one: what an answer holds is nearly all of one instant. */
let [lastAt, lastIso]: [Instant, string] = [Number.NaN, '']

function isoOf(at: Instant): string {
  const second = Math.floor(at)
  const day = Math.floor(second / daySeconds)
  const inDay = second - day * daySeconds
  const hour = (inDay / 3600) | 0
  const minute = ((inDay - hour * 3600) / 60) | 0
  return `${dateOf(day)}T${two(hour)}:${two(minute)}:${two(inDay - hour * 3600 - minute * 60)}Z`
}

const daySeconds = 86_400
/** A question asks of a few days, thousands of times. */
const dates = new Map<number, string>()
const mostDates = 1000

/** The date of a day since 1970-01-01. Throws a RangeError for a day that no calendar has. */
function dateOf(day: number): string {
  const known = dates.get(day)
  if (known !== undefined) return known
  const date = new Date(day * daySeconds * 1000).toISOString().slice(0, -14)
  if (dates.size >= mostDates) dates.clear()
  dates.set(day, date)
  return date
}

function two(value: number): string {
  return value < 10 ? `0${value}` : String(value)
}

/** Reads an ISO 8601 instant that carries `Z` or an offset; null for anything else. Fractions of a second are cut. */
export function fromIso(text: string): Instant | null {
  if (text.length === 20 && text.endsWith('Z') && /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/.test(text)) return canonicalInstant(text)
  if (!/(Z|[+-]\d{2}:?\d{2})$/i.test(text)) return null
  const read = DateTime.fromISO(text, { setZone: true })
  return read.isValid ? Math.floor(read.toSeconds()) : null
}

/** Our own form, read without a calendar library: a fold reads it for every entry. Date as arithmetic only, never as a clock. */
function canonicalInstant(text: string): Instant | null {
  const ms = Date.parse(text)
  return Number.isNaN(ms) || toIso(ms / 1000) !== text ? null : ms / 1000
}

/** The local calendar date (YYYY-MM-DD) of an instant in an IANA zone. */
export function localDate(at: Instant, zone: string): string {
  return toIso(at + offsetS(at, zone)).slice(0, 10)
}

/** The calendar date (YYYY-MM-DD) so many days after another; what is no date stays as it is. */
export function daysOn(date: string, days: number): string {
  const midnight = fromIso(`${date}T00:00:00Z`)
  return midnight === null ? date : dateOf(midnight / daySeconds + days)
}

/** Hours and minutes (24 h, HH:MM) of an instant in an IANA zone. */
export function localTime(at: Instant, zone: string): string {
  return toIso(at + offsetS(at, zone)).slice(11, 16)
}

/** The instant at which a local date (YYYY-MM-DD) begins its next day, and that of its noon. */
export function dayMarks(date: string, zone: string): { readonly noon: Instant; readonly midnight: Instant } {
  const key = `${zone} ${date}`
  const known = marks.get(key)
  if (known !== undefined) return known
  if (marks.size >= mostKept) marks.clear()
  const day = DateTime.fromISO(date, { zone })
  const made = { noon: day.set({ hour: 12 }).toSeconds(), midnight: day.plus({ days: 1 }).toSeconds() }
  marks.set(key, made)
  return made
}

/** Zones change their clocks on quarters of an hour of UTC: what held in one quarter holds in all of it. The calendar library is slow to ask. */
const quarterS = 900
const mostKept = 2000
const offsets = new Map<string, number>()
const marks = new Map<string, { readonly noon: Instant; readonly midnight: Instant }>()

/** Seconds that local time is ahead of UTC. */
function offsetS(at: Instant, zone: string): number {
  const quarter = Math.floor(at / quarterS)
  const key = `${zone} ${quarter}`
  const known = offsets.get(key)
  if (known !== undefined) return known
  if (offsets.size >= mostKept) offsets.clear()
  const offset = DateTime.fromSeconds(quarter * quarterS, { zone }).offset * 60
  offsets.set(key, offset)
  return offset
}
