import { fromIso, type Instant, toIso } from '../instant.js'
import type { Hour } from './hour.js'

/**
 * The text that a forecast is kept and hashed by: canonical JSON (RFC 8785) of its hours with ISO instants. Members stand
 * in canonical order here and hold only plain numbers, so JSON.stringify gives the same text as `canonical`, ten times faster.
 */
export function forecastBody(hours: readonly Hour[]): string {
  const dates = new Map<number, string>()
  return JSON.stringify(
    hours.map((hour) => ({
      airC: hour.airC,
      at: isoOf(hour.at, dates),
      cloudPct: hour.cloudPct,
      dewPointC: hour.dewPointC,
      gustKmh: hour.gustKmh,
      pressureHpa: hour.pressureHpa,
      rainChancePct: hour.rainChancePct,
      rainMm: hour.rainMm,
      rhPct: hour.rhPct,
      sunWm2: hour.sunWm2,
      thunder: hour.thunder,
      windKmh: hour.windKmh
    }))
  )
}

/** The hours of a kept body, for a replay; null for a text that is not one. */
export function hoursOfBody(body: string): readonly Hour[] | null {
  const rows: unknown = JSON.parse(body)
  if (!Array.isArray(rows)) return null
  return rows.map((row: Hour & { at: string }) => ({ ...row, at: fromIso(row.at) ?? Number.NaN }))
}

/** Whole hours need the calendar once a day only. */
function isoOf(at: Instant, dates: Map<number, string>): string {
  const hour = (at % 86400) / 3600
  if (!(at >= 0 && Number.isInteger(hour))) return toIso(at)
  const midnight = at - hour * 3600
  const date = dates.get(midnight) ?? toIso(midnight).slice(0, 11)
  dates.set(midnight, date)
  return `${date}${String(hour).padStart(2, '0')}:00:00Z`
}
