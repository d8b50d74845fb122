import { z } from 'zod'
import type { Instant } from '../../../core/instant.js'
import { convert } from '../../../core/units.js'
import { groundHpa } from '../../../core/weather/pressure.js'
import { instantField } from '../fields.js'
import { type HourSheet, hourlyRainMm, hourS, hourSheet, type Parsed } from '../parsed.js'

// MET Norway Locationforecast 2.0, compact and complete: only what is used. Times are UTC, speeds m/s, pressure at sea level.
const value = z.number().nullish()

const block = z
  .object({
    summary: z.object({ symbol_code: z.string().nullish() }).nullish(),
    details: z.object({ precipitation_amount: value, probability_of_precipitation: value, probability_of_thunder: value }).nullish()
  })
  .nullish()

const instant = z.object({
  air_temperature: value,
  relative_humidity: value,
  dew_point_temperature: value,
  wind_speed: value,
  wind_speed_of_gust: value,
  cloud_area_fraction: value,
  air_pressure_at_sea_level: value
})

const step = z.object({
  time: instantField,
  data: z.object({ instant: z.object({ details: instant }), next_1_hours: block, next_6_hours: block })
})

/** A MET Norway answer → hours. */
export const metAnswer = z
  .object({
    geometry: z.object({ coordinates: z.array(z.number()) }).nullish(),
    properties: z.object({ meta: z.object({ updated_at: instantField.nullish() }), timeseries: z.array(step) })
  })
  .transform(({ geometry, properties }): Parsed => {
    const sheet = hourSheet()
    const heightM = geometry?.coordinates[2] ?? 0
    for (const { time: at, data } of properties.timeseries) {
      putInstant(sheet, at, data.instant.details, heightM)
      if (data.next_1_hours) putBlock(sheet, at, data.next_1_hours, 1)
      else if (data.next_6_hours) putBlock(sheet, at, data.next_6_hours, 6)
    }
    return { issuedAt: properties.meta.updated_at ?? null, hours: sheet.hours() }
  })

function putInstant(sheet: HourSheet, at: Instant, details: z.infer<typeof instant>, heightM: number): void {
  const seaLevelHpa = details.air_pressure_at_sea_level ?? null
  sheet.put(at, {
    airC: details.air_temperature ?? null,
    rhPct: details.relative_humidity ?? null,
    dewPointC: details.dew_point_temperature ?? null,
    windKmh: kmh(details.wind_speed),
    gustKmh: kmh(details.wind_speed_of_gust),
    cloudPct: details.cloud_area_fraction ?? null,
    pressureHpa: seaLevelHpa === null ? null : groundHpa(seaLevelHpa, heightM)
  })
}

/** A block speaks of the hours after its time: each is the hour that ends at time + 1 h … + n h. */
function putBlock(sheet: HourSheet, from: Instant, told: NonNullable<z.infer<typeof block>>, hours: 1 | 6): void {
  const details = told.details
  for (let hour = 1; hour <= hours; hour += 1) {
    sheet.put(from + hour * hourS, {
      rainMm: hourlyRainMm(details?.precipitation_amount ?? null, hours),
      rainChancePct: details?.probability_of_precipitation ?? null,
      thunder: thunder(told.summary?.symbol_code ?? null, details?.probability_of_thunder ?? null)
    })
  }
}

/** The symbol says thunder or not; without one, a chance of 50 % and more counts as forecast, and a chance of 0 as none. */
function thunder(symbol: string | null, chancePct: number | null): boolean | null {
  if (symbol !== null) return symbol.includes('thunder') || (chancePct !== null && chancePct >= 50)
  return chancePct === null ? null : chancePct >= 50
}

function kmh(speedMs: number | null | undefined): number | null {
  return speedMs === null || speedMs === undefined ? null : convert(speedMs, 'm/s', 'km/h')
}
