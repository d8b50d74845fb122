import type { Instant } from '../instant.js'
import type { Forecast } from './forecast.js'
import type { Hour } from './hour.js'

const hourS = 3600
const staleAfterS = 3 * hourS
const deadAfterS = 12 * hourS

/** How old a forecast is as of `now`: issued more than 3 h ago it is stale, more than 12 h ago it says nothing any more. */
export function ageOf(forecast: Pick<Forecast, 'issuedAt'>, now: Instant): 'fresh' | 'stale' | 'dead' {
  const ageS = now - forecast.issuedAt
  if (!(ageS <= deadAfterS)) return 'dead'
  return ageS > staleAfterS ? 'stale' : 'fresh'
}

/** Index of the first hour that ends after an instant; the length of the list when there is none. Hours are in order. */
export function firstAfter(hours: readonly Hour[], at: Instant): number {
  let low = 0
  let high = hours.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if ((hours[middle]?.at ?? Number.POSITIVE_INFINITY) > at) high = middle
    else low = middle + 1
  }
  return low
}

/** The hour [at − 1 h, at) that holds an instant: at 12:00 sharp the hour 12–13. Null when it is not in the list. */
export function hourHolding(hours: readonly Hour[], at: Instant): Hour | null {
  const hour = hours[firstAfter(hours, at)]
  return hour !== undefined && hour.at - at <= hourS ? hour : null
}

/** The hours that overlap (from, from + minutes), without a gap; null when one is missing. At least the hour that holds `from`. */
export function hoursOver(hours: readonly Hour[], from: Instant, minutes: number): readonly Hour[] | null {
  if (!(minutes >= 0)) return null
  const until = from + Math.max(minutes * 60, 1)
  const over: Hour[] = []
  let covered = from
  for (let index = firstAfter(hours, from); covered < until; index += 1) {
    const hour = hours[index]
    if (hour === undefined || hour.at - hourS > covered) return null
    over.push(hour)
    covered = hour.at
  }
  return over
}

/** The hours of a forecast as known at an instant; none of one that says nothing any more. */
export function hoursKnown(forecast: Forecast | null, knownAt: Instant): readonly Hour[] {
  return forecast === null || ageOf(forecast, knownAt) === 'dead' ? [] : forecast.hours
}
