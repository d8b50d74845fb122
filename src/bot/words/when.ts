import { DateTime } from 'luxon'
import { fromIso, type Instant, toIso } from '../../core/instant.js'
import { fold } from './fold.js'
import { Refused } from './refused.js'
import type { Reader } from './said.js'

const aheadS = 300
const isoAt = /^(\d{4}-\d{2}-\d{2})T(\d{2}):(\d{2})(?::(\d{2})(?:\.\d{1,9})?)?(?:Z|[+-](\d{2}):?(\d{2}))$/i

/** Whether YYYY-MM-DD is a day of the calendar. */
export function isDate(text: string): boolean {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text)
  if (!match) return false
  const [year, month, day] = match.slice(1).map(Number) as [number, number, number]
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1]
  return year >= 1 && days !== undefined && day >= 1 && day <= days
}

/** HH:MM of a clock, two digits each, of `7:30`, `7am`, `5:30pm`, `7h` and `7h30`; null when it is none. */
export function clockTime(text: string): string | null {
  const match = /^(\d{1,2})(?::(\d{2}))?([ap]\.?m\.?)?$/i.exec(text) ?? /^(\d{1,2})h(\d{2})?$/i.exec(text)
  const [, typed = '', minute = '00', half = ''] = match ?? []
  if (!match || Number(minute) > 59 || /^\d+$/.test(text)) return null
  if (half !== '' && !(Number(typed) >= 1 && Number(typed) <= 12)) return null
  const hour = half === '' ? Number(typed) : (Number(typed) % 12) + (/^p/i.test(half) ? 12 : 0)
  return hour > 23 ? null : `${String(hour).padStart(2, '0')}:${minute}`
}

/** Today's instant of a site time; in the hour that comes twice the later one that is not ahead. Null in the hour that is skipped. */
function todayAt(time: string, { zone, now }: Reader): Instant | null {
  const { year, month, day } = DateTime.fromSeconds(now, { zone })
  const [hour, minute] = time.split(':').map(Number) as [number, number]
  const first = DateTime.fromObject({ year, month, day, hour, minute }, { zone }).toSeconds()
  const candidates = [first - 3600, first, first + 3600].filter((at) => {
    const local = DateTime.fromSeconds(at, { zone })
    return local.day === day && local.hour === hour && local.minute === minute
  })
  return candidates.filter((at) => at <= now + aheadS).at(-1) ?? candidates[0] ?? null
}

function isoInstant(text: string): Instant | null {
  const match = isoAt.exec(text)
  if (!match || !isDate(match[1] as string)) return null
  const [hour, minute, second, offsetH, offsetMin] = match.slice(2).map((part) => Number(part ?? 0)) as [number, number, number, number, number]
  if (hour > 23 || minute > 59 || second > 59 || offsetH > 14 || offsetMin > 59) return null
  return fromIso(text.toUpperCase())
}

/** The instant of `@HH:MM` (today, site time) or `@ISO` with Z or an offset; up to 5 min ahead. `text` is without the @. */
export function readInstant(text: string, reader: Reader): Instant {
  const time = clockTime(text)
  const at = time === null ? isoInstant(text) : todayAt(time, reader)
  if (at === null || !Number.isFinite(at)) throw new Refused('bad-number', `@${text}`, { label: 'time' })
  if (at > reader.now + aheadS) throw new Refused('out-of-range', `@${text}`, { label: 'time', max: toIso(reader.now + aheadS) })
  return at
}

const days: Readonly<Record<string, number>> = {
  yesterday: -1,
  ayer: -1,
  hier: -1,
  today: 0,
  hoy: 0,
  "aujourd'hui": 0,
  aujourdhui: 0,
  tomorrow: 1,
  manana: 1,
  demain: 1
}

const numericAt = /^(\d{1,4})[/.-](\d{1,2})[/.-](\d{1,4})$/

/** Whether digits parted as in a date stand here, of whatever order. */
export function looksLikeDate(text: string): boolean {
  return numericAt.test(text)
}

/**
 * YYYY-MM-DD of `31/12/2026`, `12/31/2026`, `31.12.2026`, `2026/12/31`. One that may be two days, `05/06/2026`, is refused with both; a
 * year of two digits is none.
 */
function numericDate(text: string): string | null {
  const [, first = '', second = '', third = ''] = numericAt.exec(text) ?? []
  const iso = (year: string, month: string, day: string) => `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`
  if (first.length === 4) return [iso(first, second, third)].find(isDate) ?? null
  if (third.length !== 4) return null
  const [dayFirst, monthFirst] = [iso(third, second, first), iso(third, first, second)]
  const days = [...new Set([dayFirst, monthFirst])].filter(isDate)
  if (days.length > 1) throw new Refused('bad-number', text, { label: 'date', hint: 'eitherDate', said: days })
  return days[0] ?? null
}

/** YYYY-MM-DD of a date as typed, yesterday, today and tomorrow in the site's zone; null when it is none. */
export function readDate(text: string, reader: Reader): string | null {
  const offset = Object.hasOwn(days, fold(text)) ? days[fold(text)] : undefined
  if (offset !== undefined) return DateTime.fromSeconds(reader.now, { zone: reader.zone }).plus({ days: offset }).toFormat('yyyy-MM-dd')
  return isDate(text) ? text : numericDate(text)
}

/**
 * The day of a weekday's name (1 Monday … 7 Sunday), today included: the coming one, or the last one. YYYY-MM-DD in the site's zone.
 */
export function weekdayDate(weekday: number, which: 'coming' | 'last', reader: Reader): string {
  const today = DateTime.fromSeconds(reader.now, { zone: reader.zone })
  const ahead = (weekday - today.weekday + 7) % 7
  return today.plus({ days: which === 'coming' || ahead === 0 ? ahead : ahead - 7 }).toFormat('yyyy-MM-dd')
}
