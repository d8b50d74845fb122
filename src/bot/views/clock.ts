import { DateTime } from 'luxon'
import { fromIso, type Instant, localDate, localTime } from '../../core/instant.js'
import { createMemo } from '../../core/memo.js'
import type { How } from './how.js'

/** Site-local HH:MM; with the day in front when it is not the day of `now`. */
export function clock(at: Instant, now: Instant, how: How): string {
  const time = localTime(at, how.zone)
  if (localDate(at, how.zone) === localDate(now, how.zone)) return time
  return `${dateIn(localDate(at, how.zone), 'ccc d LLL', how.lang)} ${time}`
}

/** The same for ISO text; null for what is no instant. */
export function clockOf(iso: string | null, now: Instant, how: How): string | null {
  const at = iso === null ? null : fromIso(iso)
  return at === null ? null : clock(at, now, how)
}

/** A calendar date (YYYY-MM-DD) in the language, with its year; null for what is no date. */
export function dateOf(text: string | null, how: How): string | null {
  return text === null ? null : dateIn(text, 'd LLL yyyy', how.lang)
}

/** The last ones asked for: thousands of posts name the same few days, and the calendar library is slow to ask. */
const dates = createMemo<string | null>(200)

/** A calendar date (YYYY-MM-DD) in a language, by a pattern of the calendar library; null for what is no date. */
export function dateIn(text: string, pattern: string, lang: How['lang']): string | null {
  return dates(`${lang} ${pattern} ${text}`, () => {
    const date = DateTime.fromISO(text, { zone: 'utc' })
    return date.isValid ? date.setLocale(lang).toFormat(pattern) : null
  })
}

/** Short names of ISO weekdays 1 (Monday) … 7. */
export function weekday(day: number, how: How): string {
  const monday = DateTime.fromISO('2024-01-01', { zone: 'utc' })
  return monday
    .plus({ days: (day - 1) % 7 })
    .setLocale(how.lang)
    .toFormat('ccc')
}
