import { z } from 'zod'
import type { Instant } from '../../../core/instant.js'
import { convert, type Unit } from '../../../core/units.js'
import type { Hour } from '../../../core/weather/forecast.js'
import { mostHours } from '../bounds.js'
import { instantField } from '../fields.js'
import { type HourSheet, hourlyRainMm, hourS, hourSheet, type Parsed } from '../parsed.js'
import { expand, type Interval, readInterval } from './interval.js'

// US NWS gridpoint, `/gridpoints/{office}/{x},{y}`: a series of ISO 8601 intervals for each quantity. Only what is used.
const units: Readonly<Record<string, Unit>> = {
  degC: 'C',
  degF: 'F',
  percent: '%',
  'km_h-1': 'km/h',
  'm_s-1': 'm/s',
  kt: 'kn',
  mm: 'mm',
  m: 'm'
}

const interval = z.string().transform((text, context) => {
  const read = readInterval(text)
  if (read === null) context.addIssue(`not an interval: ${text.slice(0, 60)}`)
  return read ?? z.NEVER
})

/** The values of a layer. Its intervals are unfolded to hours, so that a short list of long ones could be endless. */
function valuesOf<T extends z.ZodType>(value: T) {
  return z
    .array(z.object({ validTime: interval, value }))
    .refine((values) => hoursOf(values) <= mostHours, `intervals of more than ${mostHours} hours`)
}

function hoursOf(values: readonly { readonly validTime: Interval }[]): number {
  return values.reduce((sum, { validTime }) => sum + validTime.hours, 0)
}

/** A layer in one unit; one without values is a layer that the office does not fill. */
function layer(unit: Unit) {
  return z.object({ uom: z.string().nullish(), values: valuesOf(z.number().nullable()) }).transform(({ uom, values }, context) => {
    const from = units[(uom ?? '').replace(/^(wmoUnit|unit):/, '')]
    const factorFits = from !== undefined && convert(1, from, unit) !== null
    if (values.length > 0 && !factorFits) context.addIssue(`unknown unit: ${uom?.slice(0, 40)}`)
    return values.map(({ validTime, value }) => ({ validTime, value: value === null || !from ? null : convert(value, from, unit) }))
  })
}

const weather = z
  .object({
    values: valuesOf(z.array(z.object({ weather: z.string().nullish() })).nullable())
  })
  .nullish()

type Layer = z.infer<ReturnType<typeof layer>> | null | undefined

/** A NWS gridpoint answer → hours. Its dew point is over water; it has no sunshine. */
export const nwsAnswer = z
  .object({
    properties: z.object({
      updateTime: instantField.nullish(),
      temperature: layer('C'),
      dewpoint: layer('C').nullish(),
      relativeHumidity: layer('%').nullish(),
      windSpeed: layer('km/h').nullish(),
      windGust: layer('km/h').nullish(),
      skyCover: layer('%').nullish(),
      probabilityOfPrecipitation: layer('%').nullish(),
      quantitativePrecipitation: layer('mm').nullish(),
      weather
    })
  })
  .transform(({ properties }): Parsed => {
    const sheet = hourSheet()
    putInstants(sheet, 'airC', properties.temperature)
    putInstants(sheet, 'dewPointC', properties.dewpoint)
    putInstants(sheet, 'rhPct', properties.relativeHumidity)
    putInstants(sheet, 'windKmh', properties.windSpeed)
    putInstants(sheet, 'cloudPct', properties.skyCover)
    putHours(sheet, properties.windGust, (value) => ({ gustKmh: value }))
    putHours(sheet, properties.probabilityOfPrecipitation, (value) => ({ rainChancePct: value }))
    putHours(sheet, properties.quantitativePrecipitation, (value, hours) => ({ rainMm: hourlyRainMm(value, hours) }))
    putHours(sheet, properties.weather?.values, (value) => ({ thunder: thunder(value) }))
    return { issuedAt: properties.updateTime ?? null, hours: sheet.hours() }
  })

/** An interval holds from its start, so its value is that of every full hour in it. */
function putInstants(sheet: HourSheet, name: keyof Hour, values: Layer): void {
  for (const { validTime, value } of values ?? []) for (const at of expand(validTime)) sheet.put(at, { [name]: value })
}

/** Values of a stretch of time belong to the hours that end within it. */
function putHours<T>(
  sheet: HourSheet,
  values: readonly { validTime: { from: Instant; hours: number }; value: T }[] | null | undefined,
  of: (value: T, hours: number) => Partial<Hour>
): void {
  for (const { validTime, value } of values ?? []) {
    for (const at of expand(validTime)) sheet.put(at + hourS, of(value, validTime.hours))
  }
}

function thunder(value: readonly { weather?: string | null | undefined }[] | null): boolean | null {
  return value === null ? null : value.some((item) => item.weather?.includes('thunder') === true)
}
