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

/** HH:MM of a clock, two digits each; null when it is none. */
export function clockTime(text: string): string | null {
  const match = /^(\d{1,2}):(\d{2})$/.exec(text)
  if (!match || Number(match[1]) > 23 || Number(match[2]) > 59) return null
  return `${(match[1] as string).padStart(2, '0')}:${match[2]}`
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

/** YYYY-MM-DD of a date as typed, yesterday, today and tomorrow in the site's zone; null when it is none. */
export function readDate(text: string, reader: Reader): string | null {
  const offset = Object.hasOwn(days, fold(text)) ? days[fold(text)] : undefined
  if (offset !== undefined) return DateTime.fromSeconds(reader.now, { zone: reader.zone }).plus({ days: offset }).toFormat('yyyy-MM-dd')
  return isDate(text) ? text : null
}
