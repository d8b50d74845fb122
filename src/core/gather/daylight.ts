import { daysOn, type Instant } from '../instant.js'
import { sunTimes } from '../physics/sun.js'

/** Rises and sets of a local date and of its neighbours, so that nights across midnight come out right. */
export interface SunEvents {
  readonly date: string
  readonly sunriseAt: Instant | null
  readonly sunsetAt: Instant | null
  readonly always: 'up' | 'down' | null
  readonly rises: readonly Instant[]
  readonly sets: readonly Instant[]
}

/** The last ones asked for: a site asks for the same day again and again, and the sun is slow to reckon. */
const reckoned = new Map<string, SunEvents>()
const mostReckoned = 1000

export function sunEvents(place: { lat: number; lon: number; zone: string }, date: string): SunEvents {
  const key = `${place.lat} ${place.lon} ${place.zone} ${date}`
  const known = reckoned.get(key)
  if (known !== undefined) return known
  if (reckoned.size >= mostReckoned) reckoned.clear()
  const events = reckon(place, date)
  reckoned.set(key, events)
  return events
}

function reckon(place: { lat: number; lon: number; zone: string }, date: string): SunEvents {
  const times = [-1, 0, 1].map((shift) => sunTimes(place.lat, place.lon, daysOn(date, shift), place.zone))
  const own = times[1] as (typeof times)[number]
  return {
    date,
    sunriseAt: own.sunriseAt,
    sunsetAt: own.sunsetAt,
    always: own.always,
    rises: times.flatMap((each) => each.sunriseAt ?? []),
    sets: times.flatMap((each) => each.sunsetAt ?? [])
  }
}

/** Is the sun up, and how many minutes to sunset less the closing-up time; after sunset the last one counts, so it is negative. */
export function daylight(sun: SunEvents, now: Instant, closeUpMin: number): { sunUp: boolean; daylightMin: number | null } {
  const lastRise = lastBy(sun.rises, now)
  const lastSet = lastBy(sun.sets, now)
  const nextRise = nextAfter(sun.rises, now)
  const nextSet = nextAfter(sun.sets, now)
  const sunUp = upBetween(lastRise, lastSet, nextRise, nextSet, sun.always)
  const sunset = sunUp ? nextSet : lastSet
  return { sunUp, daylightMin: Number.isFinite(sunset) ? (sunset - now) / 60 - closeUpMin : null }
}

function lastBy(events: readonly Instant[], now: Instant): number {
  let found = Number.NEGATIVE_INFINITY
  for (const at of events) if (at <= now && at > found) found = at
  return found
}

function nextAfter(events: readonly Instant[], now: Instant): number {
  let found = Number.POSITIVE_INFINITY
  for (const at of events) if (at > now && at < found) found = at
  return found
}

/** Missing events are infinite here: none before is −∞, none after is +∞. */
function upBetween(lastRise: number, lastSet: number, nextRise: number, nextSet: number, always: SunEvents['always']): boolean {
  if (lastRise !== lastSet) return lastRise > lastSet
  if (nextRise !== nextSet) return nextSet < nextRise
  return always === 'up'
}
