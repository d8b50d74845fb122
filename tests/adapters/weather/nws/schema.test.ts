import { describe, expect, it } from 'vitest'
import { durationHours, expand, readInterval } from '../../../../src/adapters/weather/nws/interval.js'
import { nwsAnswer } from '../../../../src/adapters/weather/nws/schema.js'
import { fixture } from '../../../support/fixture.js'
import { iso } from '../../../support/instant.js'
import { truth } from '../../../support/truth.js'

const told = JSON.parse(fixture('weather/nws_gridpoints.json'))
const sample = nwsAnswer.parse(told)
const at = (text: string) => sample.hours.find((hour) => hour.at === iso(text))

describe('intervals', () => {
  it.each(truth('weather', 'ISO 8601 duration to hours'))('$id: $inputs.duration.value', ({ inputs, expected }) => {
    expect(durationHours(String(inputs.duration?.value))).toBe(expected.hours?.value)
  })

  it('expands from the start, included, to the end, excluded', () => {
    // Reference row wea-087: 18:00/PT3H → 18, 19 and 20 o'clock UTC.
    const interval = readInterval('2019-07-04T18:00:00+00:00/PT3H')
    expect(interval === null ? [] : expand(interval)).toEqual([iso('2019-07-04T18:00:00Z'), iso('2019-07-04T19:00:00Z'), iso('2019-07-04T20:00:00Z')])
  })

  it('reads offsets', () => {
    expect(readInterval('2024-02-20T03:00:00-06:00/PT1H')).toEqual({ from: iso('2024-02-20T09:00:00Z'), hours: 1 })
  })

  it.each(['', 'P', 'PT', 'P1DT', 'PT-1H', 'P1Y', '3H', 'PT1H30S'])('is no duration: %j', (text) => {
    expect(durationHours(text)).toBeNull()
  })

  it.each([
    '2024-02-20T09:00:00+00:00',
    '/PT1H',
    '2024-02-20T09:00:00/PT1H',
    '2024-02-20T09:00:00Z/PT0H',
    '2024-02-20T09:00:00Z/P999D',
    '2024-02-20T09:00:00Z/PT1H/PT1H'
  ])('is no interval: %s', (text) => {
    expect(readInterval(text)).toBeNull()
  })
})

describe('nwsAnswer', () => {
  it('has the issue time of the payload', () => {
    // Reference row wea-101.
    const [row] = truth('weather', 'header values of the payload')
    expect(sample.issuedAt).toBe(iso(String(row?.expected.updateTime?.value)))
  })

  it.each(truth('weather', 'layer unit').filter((row) => String(row.expected.uom?.value).startsWith('wmoUnit')))(
    '$id: knows the unit of $inputs.layer.value',
    ({ inputs, expected }) => {
      expect(told.properties[String(inputs.layer?.value)].uom).toBe(expected.uom?.value)
    }
  )

  it('spreads instants over their interval', () => {
    expect(at('2024-02-20T12:00:00Z')).toMatchObject({ rhPct: 82, cloudPct: 51, windKmh: 3.704 })
    expect(at('2024-02-20T17:00:00Z')?.airC).toBeCloseTo(12.777778, 6)
    expect(at('2024-02-20T18:00:00Z')).toMatchObject({ airC: null, rhPct: null })
  })

  it('gives gust, chance, rain and weather to the hour that ends within the interval', () => {
    expect(at('2024-02-20T09:00:00Z')).toMatchObject({ gustKmh: null, rainChancePct: null, thunder: null, rainMm: null })
    expect(at('2024-02-20T10:00:00Z')).toMatchObject({ gustKmh: 3.704, rainChancePct: 0, thunder: false, rainMm: 0 })
    expect(at('2024-02-20T12:00:00Z')?.gustKmh).toBe(12.9)
  })

  it('does not part a wet block of 6 hours, and has no rain where it has no block', () => {
    expect(at('2024-02-22T19:00:00Z')).toMatchObject({ rainMm: null, rainChancePct: 13 })
    expect(at('2024-02-21T12:00:00Z')).toMatchObject({ rainMm: null, rainChancePct: 0 })
  })

  it('never has sunshine', () => {
    for (const hour of sample.hours) expect(hour.sunWm2).toBeNull()
  })

  it('reads other units, nulls, empty layers and thunder', () => {
    const validTime = '2024-05-01T12:00:00+00:00/PT1H'
    const { hours } = nwsAnswer.parse({
      properties: {
        temperature: { uom: 'wmoUnit:degF', values: [{ validTime, value: 70 }] },
        dewpoint: { values: [] },
        windSpeed: { uom: 'unit:m_s-1', values: [{ validTime, value: 10 }] },
        windGust: { uom: 'wmoUnit:km_h-1', values: [{ validTime, value: null }] },
        quantitativePrecipitation: { uom: 'wmoUnit:mm', values: [{ validTime, value: 1.5 }] },
        weather: { values: [{ validTime, value: [{ weather: null }, { weather: 'thunderstorms' }] }] }
      }
    })
    // Reference rows wea-103 and wea-107: 10 m/s is 36 km/h, 70 °F is 21.11111 °C.
    expect(hours[0]?.airC).toBeCloseTo(21.11111, 5)
    expect(hours[0]).toMatchObject({ windKmh: 36, dewPointC: null })
    expect(hours[1]).toMatchObject({ thunder: true, rainMm: 1.5, gustKmh: null })
  })

  it.each([
    ['no temperature', { properties: {} }],
    ['an unknown unit', { properties: { temperature: { uom: 'wmoUnit:K_s', values: [{ validTime: '2024-05-01T12:00:00Z/PT1H', value: 1 }] } } }],
    [
      'the unit of another quantity',
      { properties: { temperature: { uom: 'wmoUnit:percent', values: [{ validTime: '2024-05-01T12:00:00Z/PT1H', value: 1 }] } } }
    ],
    ['a broken interval', { properties: { temperature: { uom: 'wmoUnit:degC', values: [{ validTime: 'soon', value: 1 }] } } }],
    ['words for numbers', { properties: { temperature: { uom: 'wmoUnit:degC', values: [{ validTime: '2024-05-01T12:00:00Z/PT1H', value: '1' }] } } }]
  ])('refuses %s', (_, answer) => {
    expect(nwsAnswer.safeParse(answer).success).toBe(false)
  })
})
