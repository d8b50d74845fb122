import { z } from 'zod'
import { fromIso, type Instant } from '../../../core/instant.js'
import { convert, type Unit } from '../../../core/units.js'
import { emptyHour, type Hour } from '../../../core/weather/hour.js'
import { groundHpa } from '../../../core/weather/pressure.js'
import type { Parsed } from '../parsed.js'

// Open-Meteo forecast, hourly: one array for each quantity beside one of local times, with the offset told apart. Only what is used.
const units: Readonly<Record<string, Unit>> = {
  '°C': 'C',
  '°F': 'F',
  '%': '%',
  'km/h': 'km/h',
  'm/s': 'm/s',
  'mp/h': 'mph',
  kn: 'kn',
  mm: 'mm',
  inch: 'in',
  'W/m²': 'W/m2'
}

const series = z.array(z.number().nullable()).nullish()

const names = {
  temperature_2m: 'C',
  relative_humidity_2m: '%',
  dew_point_2m: 'C',
  wind_speed_10m: 'km/h',
  wind_gusts_10m: 'km/h',
  cloud_cover: '%',
  precipitation: 'mm',
  precipitation_probability: '%',
  shortwave_radiation: 'W/m2'
} as const satisfies Record<string, Unit>
type Name = keyof typeof names

const answer = z.object({
  utc_offset_seconds: z.number().int().min(-64800).max(64800),
  elevation: z.number().nullish(),
  hourly_units: z.record(z.string(), z.string()),
  hourly: z.object({
    time: z.array(z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/, 'not a local time YYYY-MM-DDTHH:MM')),
    temperature_2m: z.array(z.number().nullable()),
    relative_humidity_2m: series,
    dew_point_2m: series,
    wind_speed_10m: series,
    wind_gusts_10m: series,
    cloud_cover: series,
    precipitation: series,
    precipitation_probability: series,
    shortwave_radiation: series,
    weather_code: series,
    surface_pressure: series,
    pressure_msl: series
  })
})
type Answer = z.infer<typeof answer>

/** An Open-Meteo answer → hours. It does not say when it was issued. */
export const openMeteoAnswer = answer.transform((told, context): Parsed => {
  for (const problem of problems(told)) context.addIssue(problem)
  const hours = told.hourly.time.map((text, index) => hourOf(told, utc(text, told.utc_offset_seconds), index))
  if (hours.some((hour) => Number.isNaN(hour.at))) context.addIssue('a time that does not exist')
  return { issuedAt: null, hours }
})

function problems(told: Answer): string[] {
  const found: string[] = []
  for (const [name, list] of Object.entries(told.hourly)) {
    if (list && list.length !== told.hourly.time.length) found.push(`${name}: ${list.length} values for ${told.hourly.time.length} times`)
  }
  for (const [name, unit] of Object.entries(names)) {
    if (!told.hourly[name as Name]) continue
    const from = units[told.hourly_units[name] ?? '']
    if (from === undefined || convert(1, from, unit) === null) found.push(`${name}: unknown unit ${told.hourly_units[name]}`)
  }
  return found
}

/** The offset holds for the whole answer, also across the night when clocks change. */
function utc(local: string, offsetS: number): Instant {
  const at = fromIso(`${local}:00Z`)
  return at === null ? Number.NaN : at - offsetS
}

function hourOf(told: Answer, at: Instant, index: number): Hour {
  const read = (name: Name): number | null => {
    const value = told.hourly[name]?.[index] ?? null
    const from = units[told.hourly_units[name] ?? '']
    return value === null || from === undefined ? null : convert(value, from, names[name])
  }
  return {
    ...emptyHour(at),
    airC: read('temperature_2m'),
    rhPct: read('relative_humidity_2m'),
    dewPointC: read('dew_point_2m'),
    windKmh: read('wind_speed_10m'),
    gustKmh: read('wind_gusts_10m'),
    cloudPct: read('cloud_cover'),
    rainMm: read('precipitation'),
    rainChancePct: read('precipitation_probability'),
    sunWm2: read('shortwave_radiation'),
    thunder: thunder(told.hourly.weather_code?.[index] ?? null),
    pressureHpa: pressureOf(told, index)
  }
}

/** WMO code table 4677 as the service uses it: 95 thunderstorm, 96 and 99 with hail. */
function thunder(code: number | null): boolean | null {
  return code === null ? null : code === 95 || code === 96 || code === 99
}

function pressureOf(told: Answer, index: number): number | null {
  const ground = told.hourly.surface_pressure?.[index] ?? null
  const seaLevel = told.hourly.pressure_msl?.[index] ?? null
  if (ground !== null || seaLevel === null) return ground
  return groundHpa(seaLevel, told.elevation ?? 0)
}
