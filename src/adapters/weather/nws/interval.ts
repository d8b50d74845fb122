import { fromIso, type Instant } from '../../../core/instant.js'
import { hourS } from '../parsed.js'

export interface Interval {
  readonly from: Instant
  readonly hours: number
}

/** Longest interval that is believed, hours: a gridpoint looks 8 days ahead. */
const longestH = 400

/** Hours of an ISO 8601 duration in days, hours and minutes (a day is 24 h); null for anything else. Source: ISO 8601-1. */
export function durationHours(text: string): number | null {
  const found = /^P(?:(\d{1,3})D)?(?:T(?:(\d{1,4})H)?(?:(\d{1,5})M)?)?$/.exec(text)
  if (found === null || /[PT]$/.test(text)) return null
  const [days, hours, minutes] = [1, 2, 3].map((group) => Number(found[group] ?? 0))
  return (days ?? 0) * 24 + (hours ?? 0) + (minutes ?? 0) / 60
}

/** `2019-07-04T18:00:00+00:00/PT3H`; null for anything else. */
export function readInterval(text: string): Interval | null {
  const [start, duration, rest] = text.split('/')
  const from = fromIso(start ?? '')
  const hours = durationHours(duration ?? '')
  if (from === null || hours === null || rest !== undefined || !(hours > 0 && hours <= longestH)) return null
  return { from, hours }
}

/** Full hours from the start of an interval (included) to its end (excluded). */
export function expand({ from, hours }: Interval): readonly Instant[] {
  const first = Math.floor(from / hourS) * hourS
  const until = from + hours * hourS
  const list: Instant[] = []
  for (let at = first; at < until; at += hourS) list.push(at)
  return list
}
