import { describe, expect, it } from 'vitest'
import { metAnswer } from '../../../../src/adapters/weather/met/schema.js'
import { dewPointC } from '../../../../src/core/physics/air.js'
import { fixture } from '../../../support/fixture.js'
import { iso } from '../../../support/instant.js'
import { truth } from '../../../support/truth.js'

const complete = metAnswer.parse(JSON.parse(fixture('weather/metno_complete.json')))
const compact = metAnswer.parse(JSON.parse(fixture('weather/metno_compact.json')))
const at = (read: typeof complete, text: string) => read.hours.find((hour) => hour.at === iso(text))

/** One step of a timeseries. */
function step(time: string, instant: object, blocks: object = {}) {
  return { time, data: { instant: { details: instant }, ...blocks } }
}
function read(...timeseries: object[]) {
  return metAnswer.parse({ properties: { meta: { updated_at: '2026-05-04T06:00:00Z' }, timeseries } }).hours
}

describe('metAnswer', () => {
  it('reads instants at their time in UTC, speeds in km/h', () => {
    expect(complete.issuedAt).toBe(iso('2020-07-20T01:30:57Z'))
    expect(at(complete, '2020-07-20T11:00:00Z')).toMatchObject({ airC: 18.8, rhPct: 47, dewPointC: 7.2, cloudPct: 12.5, rainMm: null })
    expect(at(complete, '2020-07-20T11:00:00Z')?.windKmh).toBeCloseTo(2.3 * 3.6, 9)
  })

  it.each(truth('weather', 'payload dew point against Magnus').filter((row) => String(row.inputs.time?.value).startsWith('2020-07-20')))(
    '$id: dew point of $inputs.time.value',
    ({ inputs, expected, tolerance }) => {
      const hour = at(complete, String(inputs.time?.value))
      expect(hour).toMatchObject({ airC: inputs.air?.value, rhPct: inputs.rh?.value, dewPointC: expected.dewPoint?.value })
      const ours = dewPointC(hour?.airC ?? Number.NaN, hour?.rhPct ?? Number.NaN)
      expect(Math.abs(ours - Number(expected.dewPoint?.value))).toBeLessThanOrEqual(tolerance?.dewPoint ?? 0)
    }
  )

  it('gives the amount of the next hour to the hour that ends then', () => {
    const hours = read(
      step(
        '2026-05-04T11:00:00Z',
        { air_temperature: 10 },
        { next_1_hours: { details: { precipitation_amount: 0.7, probability_of_precipitation: 65 } } }
      )
    )
    expect(hours.map((hour) => hour.rainMm)).toEqual([null, 0.7])
    expect(hours[1]).toMatchObject({ at: iso('2026-05-04T12:00:00Z'), rainChancePct: 65, airC: null })
  })

  it('lacks gust, chance, dew point and sun in compact: null, never 0', () => {
    for (const hour of compact.hours) expect(hour).toMatchObject({ gustKmh: null, rainChancePct: null, dewPointC: null, sunWm2: null })
  })

  it('keeps a dry block of 6 hours dry every hour and does not part a wet one', () => {
    const block = (precipitation_amount: number) => ({
      next_6_hours: { summary: { symbol_code: 'rain' }, details: { precipitation_amount, probability_of_precipitation: 40 } }
    })
    const hours = read(
      step('2026-05-06T00:00:00Z', { air_temperature: 10 }, block(0)),
      step('2026-05-06T06:00:00Z', { air_temperature: 12 }, block(3))
    )
    expect(hours).toHaveLength(13)
    expect(hours.slice(1, 7).map((hour) => hour.rainMm)).toEqual([0, 0, 0, 0, 0, 0])
    expect(hours.slice(7).map((hour) => hour.rainMm)).toEqual([null, null, null, null, null, null])
    expect(hours.slice(1).every((hour) => hour.rainChancePct === 40)).toBe(true)
    expect(hours.map((hour) => hour.airC).filter((airC) => airC !== null)).toEqual([10, 12])
  })

  it('turns to 6-hour blocks where the stored answer does', () => {
    // Reference row wea-070: the first time without next_1_hours is 2020-07-22T18:00Z.
    const [row] = truth('weather', 'first time without next_1_hours')
    const change = iso(String(row?.expected.time?.value))
    expect(complete.hours.filter((hour) => hour.at > change && hour.at <= change + 6 * 3600)).toHaveLength(6)
  })

  it.each([
    [{ summary: { symbol_code: 'heavyrainandthunder' } }, true],
    [{ summary: { symbol_code: 'rain' }, details: { probability_of_thunder: 20 } }, false],
    [{ summary: { symbol_code: 'rain' }, details: { probability_of_thunder: 50 } }, true],
    [{ details: { probability_of_thunder: 1 } }, false],
    [{ details: {} }, null]
  ])('reads thunder from %j: %s', (next_1_hours, thunder) => {
    expect(read(step('2026-05-04T11:00:00Z', {}, { next_1_hours }))[1]?.thunder).toBe(thunder)
  })

  it('takes the gust of complete, and null for null', () => {
    expect(read(step('2026-05-04T11:00:00Z', { wind_speed_of_gust: 10 }))[0]?.gustKmh).toBeCloseTo(36, 9)
    expect(read(step('2026-05-04T11:00:00Z', { wind_speed_of_gust: null, air_temperature: null }))[0]).toMatchObject({
      gustKmh: null,
      airC: null
    })
  })

  it('brings the pressure down to the ground', () => {
    const answer = {
      geometry: { coordinates: [8, 47, 1000] },
      properties: { meta: {}, timeseries: [step('2026-05-04T11:00:00Z', { air_pressure_at_sea_level: 1013.25 })] }
    }
    // Standard atmosphere at 1000 m: 898.75 hPa (from memory).
    expect(metAnswer.parse(answer).hours[0]?.pressureHpa).toBeCloseTo(898.75, 1)
    expect(metAnswer.parse(answer).issuedAt).toBeNull()
  })

  it.each([
    ['no series', { properties: { meta: {} } }],
    ['a time without zone', { properties: { meta: {}, timeseries: [step('2026-05-04T11:00:00', {})] } }],
    ['words for numbers', { properties: { meta: {}, timeseries: [step('2026-05-04T11:00:00Z', { air_temperature: 'warm' })] } }],
    ['a step without an instant', { properties: { meta: {}, timeseries: [{ time: '2026-05-04T11:00:00Z', data: {} }] } }]
  ])('refuses %s', (_, answer) => {
    expect(metAnswer.safeParse(answer).success).toBe(false)
  })
})
