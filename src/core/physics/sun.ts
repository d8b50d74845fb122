import { getPosition, getTimes } from 'suncalc'
import { dayMarks, type Instant, localDate } from '../instant.js'
import { within } from './range.js'

/**
 * Wraps suncalc 2 (degrees, azimuth from north, with refraction; Meeus, Astronomical Algorithms), the only file that
 * does. The library wants `Date`, always built here from an instant: nothing reads the clock.
 */
export interface SunPosition {
  /** Apparent height over the horizon, refraction included. */
  readonly elevationDeg: number
  /** Clockwise from north. */
  readonly azimuthDeg: number
}

export interface SunTimes {
  readonly sunriseAt: Instant | null
  readonly sunsetAt: Instant | null
  /** The sun does not cross the horizon: it stays up or down; null on a day with rise and set. */
  readonly always: 'up' | 'down' | null
}

const none: SunTimes = { sunriseAt: null, sunsetAt: null, always: null }
const dayS = 86400

function refuseOffEarth(lat: number, lon: number): void {
  within('lat', lat, -90, 90)
  within('lon', lon, -180, 180)
}

function toDate(at: Instant): Date {
  return new Date(at * 1000)
}

function toInstant(date: Date | null): Instant | null {
  return date === null ? null : Math.round(date.getTime() / 1000)
}

/** Where the sun stands; latitude −90…90, longitude −180…180 (east positive), years 1900…2150, within 0.02°. */
export function sunPosition(lat: number, lon: number, at: Instant): SunPosition {
  refuseOffEarth(lat, lon)
  const { altitude, azimuth } = getPosition(toDate(at), lat, lon)
  return { elevationDeg: altitude, azimuthDeg: azimuth }
}

/**
 * Sunrise and sunset (upper edge on a flat horizon, −0.833°) of the day whose solar noon falls on a local calendar date
 * (YYYY-MM-DD in an IANA zone), so that the sunset is the one after that sunrise, past midnight too in a far northern
 * summer. All null for a date that the zone does not have. Within some seconds below 60° of latitude.
 */
export function sunTimes(lat: number, lon: number, date: string, zone: string): SunTimes {
  refuseOffEarth(lat, lon)
  const { noon } = dayMarks(date, zone)
  if (Number.isNaN(noon)) return none
  // The library answers for the solar noon nearest to the instant given; in a zone far from its longitude that noon may be a day off.
  for (const shiftS of [0, -dayS, dayS]) {
    const times = getTimes(toDate(noon + shiftS), lat, lon)
    if (localDate(times.solarNoon.getTime() / 1000, zone) !== date) continue
    const always = times.sunrise !== null ? null : times.alwaysUp === true ? 'up' : 'down'
    return { sunriseAt: toInstant(times.sunrise), sunsetAt: toInstant(times.sunset), always }
  }
  return none
}
