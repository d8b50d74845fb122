import fc from 'fast-check'
import { readWeatherFile, WeatherFileError } from '../../../src/adapters/weather/file.js'
import { type Forecast, makeForecast } from '../../../src/core/weather/forecast.js'
import { emptyHour, type Hour } from '../../../src/core/weather/hour.js'
import { fixture } from '../fixture.js'
import { type Change, type Cut, changes, cuts, cutText, mutated, polluted } from './mutate.js'

export interface Answer {
  readonly source: string
  readonly changes: readonly Change[]
  readonly cuts: readonly Cut[]
}

/** Recorded answers. */
const recorded: Readonly<Record<string, unknown>> = Object.fromEntries(
  ['metno_compact', 'metno_complete', 'nws_gridpoints', 'open-meteo_forecast'].map((name) => [name, JSON.parse(fixture(`weather/${name}.json`))])
)

/** A recorded answer of a source that was changed on the way. */
export const answers: fc.Arbitrary<Answer> = fc.record({ source: fc.constantFrom(...Object.keys(recorded)), changes, cuts })

function answerText({ source, changes: made, cuts: cut }: Answer): string {
  return cutText(JSON.stringify(mutated(recorded[source], made)), cut)
}

/** What is wrong with how an answer was read; null: nothing. A refusal by name is right, so is a forecast that can be believed. */
export function answerFault(answer: Answer): string | null {
  const forecast = forecastOf(answer)
  if (typeof forecast === 'string') return forecast
  if (polluted()) return 'a prototype was changed'
  return forecast === null ? null : hoursFault(forecast)
}

/** The forecast; null where it was refused; a text where neither is right. */
function forecastOf(answer: Answer): Forecast | string | null {
  try {
    return readWeatherFile(answerText(answer), 1_777_881_600)
  } catch (error) {
    if (!(error instanceof WeatherFileError)) return `threw ${error instanceof Error ? error.stack : String(error)}`
    return error.message.length > 2000 ? 'a refusal that nobody can read' : null
  }
}

function hoursFault({ hours, sha256 }: Forecast): string | null {
  if (!/^[0-9a-f]{64}$/.test(sha256)) return 'no hash'
  if (hours.some(({ at }, i) => !Number.isInteger(at) || at <= (hours[i - 1]?.at ?? Number.NEGATIVE_INFINITY))) return 'hours out of order'
  const wild = hours.flatMap((hour) => Object.entries(hour)).find(([, value]) => typeof value === 'number' && !Number.isFinite(value))
  if (wild !== undefined) return `${wild[0]} is ${wild[1]}`
  const impossible = hours.find(({ rhPct, windKmh, airC }) => (rhPct ?? 1) <= 0 || (windKmh ?? 0) < 0 || Math.abs(airC ?? 0) > 90)
  return impossible === undefined ? null : `an hour that cannot be: ${JSON.stringify(impossible)}`
}

const extreme = (low: number, high: number) =>
  fc.oneof({ weight: 1, arbitrary: fc.constantFrom(null, low, high) }, { weight: 3, arbitrary: fc.double({ min: low, max: high, noNaN: true }) })

const hour = fc.record({
  airC: extreme(-89, 60),
  rhPct: extreme(0.1, 100),
  dewPointC: extreme(-100, 45),
  windKmh: extreme(0, 450),
  cloudPct: extreme(0, 100),
  pressureHpa: extreme(500, 1100),
  gustKmh: extreme(0, 500),
  rainMm: extreme(0, 500),
  rainChancePct: extreme(0, 100),
  thunder: fc.constantFrom(null, true, false),
  sunWm2: extreme(0, 1500)
})

/** Hours that a source may give and no roof has seen: every value anywhere in its range, with holes, from before `from` on. */
export function wildForecasts(from: number): fc.Arbitrary<Forecast> {
  return fc
    .record({
      hours: fc.array(hour, { minLength: 1, maxLength: 40 }),
      repeated: fc.integer({ min: 1, max: 3 }),
      startH: fc.integer({ min: -40, max: 10 }),
      stepH: fc.constantFrom(1, 1, 1, 3, 6)
    })
    .map(({ hours, repeated, startH, stepH }) => {
      const rows = Array.from({ length: repeated }, () => hours).flat()
      const list = rows.map((one, i): Hour => ({ ...emptyHour(from + (startH + i * stepH) * 3600), ...one }))
      return makeForecast({ source: 'met', issuedAt: from + startH * 3600, sample: false, hours: list })
    })
}
