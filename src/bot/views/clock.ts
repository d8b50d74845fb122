import { DateTime } from 'luxon'
import { fromIso, type Instant, localDate, localTime } from '../../core/instant.js'
import type { How } from './how.js'

/** Site-local HH:MM; with the day in front when it is not the day of `now`. */
export function clock(at: Instant, now: Instant, how: How): string {
  const time = localTime(at, how.zone)
  if (localDate(at, how.zone) === localDate(now, how.zone)) return time
  return `${DateTime.fromSeconds(at, { zone: how.zone }).setLocale(how.lang).toFormat('ccc d LLL')} ${time}`
}

/** The same for ISO text; null for what is no instant. */
export function clockOf(iso: string | null, now: Instant, how: How): string | null {
  const at = iso === null ? null : fromIso(iso)
  return at === null ? null : clock(at, now, how)
}

/** A calendar date (YYYY-MM-DD) in the language, with its year; null for what is no date. */
export function dateOf(text: string | null, how: How): string | null {
  if (text === null) return null
  const date = DateTime.fromISO(text, { zone: 'utc' })
  return date.isValid ? date.setLocale(how.lang).toFormat('d LLL yyyy') : null
}

/** Short names of ISO weekdays 1 (Monday) … 7. */
export function weekday(day: number, how: How): string {
  const monday = DateTime.fromISO('2024-01-01', { zone: 'utc' })
  return monday
    .plus({ days: (day - 1) % 7 })
    .setLocale(how.lang)
    .toFormat('ccc')
}
