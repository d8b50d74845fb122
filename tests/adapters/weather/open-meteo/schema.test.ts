import { DateTime } from 'luxon'
import { describe, expect, it } from 'vitest'
import { openMeteoAnswer } from '../../../../src/adapters/weather/open-meteo/schema.js'
import { toIso } from '../../../../src/core/instant.js'
import { fixture } from '../../../support/fixture.js'
import { iso } from '../../../support/instant.js'
import { truth } from '../../../support/truth.js'

const told = JSON.parse(fixture('weather/open-meteo_forecast.json'))
const sample = openMeteoAnswer.parse(told)

function answer(hourly: object, units: object = {}, offsetS = 0) {
  return {
    utc_offset_seconds: offsetS,
    hourly_units: { temperature_2m: '°C', ...units },
    hourly: { time: ['2026-05-04T12:00'], temperature_2m: [10], ...hourly }
  }
}
const first = (input: unknown) => openMeteoAnswer.parse(input).hours[0]

describe('openMeteoAnswer', () => {
  it('turns local times into UTC by the offset of the answer, and does not say when it was issued', () => {
    expect(sample.issuedAt).toBeNull()
    expect(sample.hours.map((hour) => toIso(hour.at)).slice(0, 2)).toEqual(['2026-05-04T02:00:00Z', '2026-05-04T03:00:00Z'])
    expect(sample.hours.find((hour) => hour.at === iso('2026-05-04T08:00:00Z'))).toMatchObject({
      airC: 12.6,
      rhPct: 70,
      gustKmh: 24.1,
      sunWm2: 431,
      rainChancePct: 10
    })
  })

  it('keeps half-hour offsets', () => {
    expect(toIso(first(answer({}, {}, 19800))?.at ?? 0)).toBe('2026-05-04T06:30:00Z')
  })

  it('has hours without gap or double on the days clocks change', () => {
    // 24 local times from midnight under the one offset of the answer, as the service sends them on 2026-03-29 and 2026-10-25 in Berlin.
    for (const [day, offsetS] of [
      ['2026-03-29', 3600],
      ['2026-10-25', 7200]
    ] as const) {
      const time = Array.from({ length: 24 }, (_, hour) => `${day}T${String(hour).padStart(2, '0')}:00`)
      const { hours } = openMeteoAnswer.parse(answer({ time, temperature_2m: time.map((_, hour) => hour) }, {}, offsetS))
      expect(hours[0]?.at).toBe(DateTime.fromISO(`${day}T00:00`, { zone: 'Europe/Berlin' }).toSeconds())
      expect(hours.every((hour, index) => hour.at === (hours[0]?.at ?? 0) + index * 3600)).toBe(true)
    }
  })

  it.each([
    ['km/h', 36],
    ['m/s', 10],
    ['mp/h', 22.369362920544],
    ['kn', 19.438444924406]
  ])('reads wind in %s', (unit, value) => {
    expect(truth('weather', 'wind unit string').map((row) => row.expected.unitString?.value)).toContain(unit)
    expect(first(answer({ wind_speed_10m: [value] }, { wind_speed_10m: unit }))?.windKmh).toBeCloseTo(36, 6)
  })

  it('reads °F and inches', () => {
    // Reference rows wea-106 and wea-107: 1 inch is 25.4 mm, 70 °F is 21.11111 °C.
    const hour = first(answer({ temperature_2m: [70], precipitation: [1] }, { temperature_2m: '°F', precipitation: 'inch' }))
    expect(hour?.rainMm).toBeCloseTo(25.4, 9)
    expect(hour?.airC).toBeCloseTo(21.11111, 5)
  })

  it.each(truth('weather', 'weather code'))('$id: code $inputs.code.value is $expected.text.value', ({ inputs, expected }) => {
    const thunder = String(expected.text?.value).includes('thunder')
    expect(first(answer({ weather_code: [Number(inputs.code?.value)] }))?.thunder).toBe(thunder)
  })

  it('gives null for null and for what was not asked', () => {
    expect(sample.hours.at(-1)).toMatchObject({ rainChancePct: null, rainMm: 1.1 })
    expect(first(answer({ temperature_2m: [null], weather_code: [null] }))).toMatchObject({
      airC: null,
      thunder: null,
      rainMm: null,
      gustKmh: null,
      sunWm2: null
    })
  })

  it('takes the pressure at the ground, else that of the sea brought down', () => {
    expect(first(answer({ surface_pressure: [950.5], pressure_msl: [1013] }))?.pressureHpa).toBe(950.5)
    // Standard atmosphere at 1000 m: 898.75 hPa (from memory).
    expect(first({ ...answer({ pressure_msl: [1013.25] }), elevation: 1000 })?.pressureHpa).toBeCloseTo(898.75, 1)
  })

  it.each([
    ['an error of the service', JSON.parse(fixture('weather/open-meteo_error_400.json'))],
    ['lists of unequal length', answer({ precipitation: [0, 0] }, { precipitation: 'mm' })],
    ['an unknown unit', answer({ wind_speed_10m: [1] }, { wind_speed_10m: 'furlong' })],
    ['the unit of another quantity', answer({ wind_speed_10m: [1] }, { wind_speed_10m: 'mm' })],
    ['a missing unit', answer({ precipitation: [1] })],
    ['a time that does not exist', answer({ time: ['2026-02-30T12:00'] })],
    ['numbers for times', answer({ time: [1777896000] })],
    ['words for numbers', answer({ temperature_2m: ['warm'] })]
  ])('refuses %s', (_, input) => {
    expect(openMeteoAnswer.safeParse(input).success).toBe(false)
  })
})
