import { z } from 'zod'
import type { Instant } from '../../core/instant.js'
import { type Forecast, makeForecast } from '../../core/weather/forecast.js'
import { mostBytes, mostBytesText, mostHours } from './bounds.js'
import { firstProblems, inShort } from './fields.js'
import { type SourceName, sourceNames, sources } from './sources.js'

/** A weather file that cannot be used. The message says what is wrong with it. */
export class WeatherFileError extends Error {
  override readonly name = 'WeatherFileError'
}

/**
 * Reads a stored answer of one of the sources, known by its shape. Issued at its own time, else at `fallbackIssuedAt`.
 * Throws WeatherFileError for what is not one, is damaged, too large, or holds no hour.
 */
export function readWeatherFile(text: string, fallbackIssuedAt: Instant): Forecast {
  const told = parse(text)
  const source = sourceOf(told)
  const read = sources[source].answer.safeParse(told)
  if (!read.success) throw new WeatherFileError(`${sources[source].publisher} forecast is damaged: ${firstProblems(read.error)}`)
  const { issuedAt, hours } = read.data
  if (hours.length === 0) throw new WeatherFileError(`${sources[source].publisher} forecast holds no hours`)
  if (hours.length > mostHours) throw new WeatherFileError(`${sources[source].publisher} forecast holds more than ${mostHours} hours`)
  return makeForecast({ source, issuedAt: issuedAt ?? fallbackIssuedAt, sample: false, hours })
}

function parse(text: string): unknown {
  // Characters stand for bytes here: all that is read of an answer is ASCII but for the signs of units.
  if (text.length > mostBytes) throw new WeatherFileError(`weather file is larger than ${mostBytesText}`)
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch {
    throw new WeatherFileError('weather file is not JSON')
  }
}

function sourceOf(told: unknown): SourceName {
  const refused = z.object({ error: z.literal(true), reason: z.string() }).safeParse(told)
  if (refused.success) throw new WeatherFileError(`weather file holds an error of the service: ${inShort(refused.data.reason)}`)
  const found = sourceNames.find((name) => has(told, sources[name].mark))
  if (found === undefined) {
    throw new WeatherFileError('weather file is none of: MET Norway locationforecast, US NWS gridpoint, Open-Meteo forecast')
  }
  return found
}

function has(told: unknown, [outer, inner]: readonly [string, string]): boolean {
  return z.object({ [outer]: z.object({ [inner]: z.unknown().nonoptional() }) }).safeParse(told).success
}
