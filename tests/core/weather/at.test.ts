import { describe, expect, it } from 'vitest'
import { dewPointC } from '../../../src/core/physics/air.js'
import { weatherAt } from '../../../src/core/weather/at.js'
import { forecastOf, hour } from '../../support/hours.js'
import { iso } from '../../support/instant.js'

const spread = { airK: 1.5, rhPct: 7, windKmh: 5, gustKmh: 8, gustEstimatedKmh: 12 }
const at0 = '2026-05-04T12:00:00Z'
const forecast = forecastOf(at0, [
  hour('2026-05-04T12:00:00Z', {
    airC: 10,
    rhPct: 80,
    windKmh: 10,
    cloudPct: 0,
    pressureHpa: 1000,
    gustKmh: 30,
    rainMm: 0,
    rainChancePct: 10,
    thunder: false,
    sunWm2: 500
  }),
  hour('2026-05-04T13:00:00Z', {
    airC: 14,
    rhPct: 60,
    windKmh: 20,
    cloudPct: 100,
    pressureHpa: 1004,
    gustKmh: 18,
    rainMm: 2,
    rainChancePct: 60,
    thunder: true,
    sunWm2: 100
  }),
  hour('2026-05-04T14:00:00Z', { airC: 16, rhPct: 50, dewPointC: 17, windKmh: 30, rainMm: 0, rainChancePct: 0, thunder: false })
])
const look = (at: string, now = at0) => weatherAt(forecast, iso(now), iso(at), spread)

describe('weatherAt: instants', () => {
  it('goes in a straight line between the hours', () => {
    const weather = look('2026-05-04T12:15:00Z')
    expect(weather.airC.value).toBeCloseTo(11, 9)
    expect(weather.rhPct.value).toBeCloseTo(75, 9)
    expect(weather.windKmh.value).toBeCloseTo(12.5, 9)
    expect(weather.cloudPct.value).toBeCloseTo(25, 9)
    expect(weather.pressureHpa.value).toBeCloseTo(1001, 9)
    expect(weather.airC).toMatchObject({ origin: 'forecast', at: iso('2026-05-04T12:15:00Z'), stale: false })
  })

  it('gives the value of the hour itself, also of the last', () => {
    expect(look('2026-05-04T12:00:00Z').airC.value).toBe(10)
    expect(look('2026-05-04T14:00:00Z').airC.value).toBe(16)
  })

  it('is not carried on before the first hour or beyond the last', () => {
    expect(look('2026-05-04T11:59:59Z').airC.value).toBeNull()
    expect(look('2026-05-04T14:00:01Z').airC).toMatchObject({ value: null, origin: null, at: null })
  })

  it.each([
    [6, 13],
    [7, null]
  ])('bridges a gap of %i h: %s', (hours, middle) => {
    const far = forecastOf(at0, [
      hour(at0, { airC: 10 }),
      hour('2026-05-04T13:00:00Z', { rainMm: 0 }),
      { ...hour(at0), at: iso(at0) + hours * 3600, airC: 16 }
    ])
    expect(weatherAt(far, iso(at0), iso('2026-05-04T15:00:00Z'), spread).airC.value).toBe(middle)
  })

  it('says nothing without a forecast', () => {
    const weather = weatherAt(null, iso(at0), iso(at0), spread)
    expect(weather.airC).toEqual({ value: null, at: null, origin: null, spread: 0, stale: false })
    expect(weather).toMatchObject({ rainMm: null, rainChancePct: null, thunder: null })
  })
})

describe('weatherAt: values of the preceding hour', () => {
  // outside contract §2: at 12:00 sharp the hour 12–13 counts; reference rows wea-008 … wea-012: stamped 13:00, they cover 12:00–13:00.
  it.each([
    ['2026-05-04T12:00:00Z', 2, 60, true, 100],
    ['2026-05-04T12:59:59Z', 2, 60, true, 100],
    ['2026-05-04T13:00:00Z', 0, 0, false, null],
    ['2026-05-04T11:59:59Z', 0, 10, false, 500],
    ['2026-05-04T11:00:00Z', 0, 10, false, 500],
    ['2026-05-04T10:59:59Z', null, null, null, null],
    ['2026-05-04T14:00:00Z', null, null, null, null]
  ])('at %s', (at, rainMm, rainChancePct, thunder, sunWm2) => {
    const weather = look(at)
    expect(weather).toMatchObject({ rainMm, rainChancePct, thunder })
    expect(weather.sunWm2.value).toBe(sunWm2)
  })
})

describe('weatherAt: estimates', () => {
  it('takes 1.6 × the mean wind where there is no gust, with the wider spread (from memory)', () => {
    expect(look('2026-05-04T13:30:00Z').gustKmh.value).toBeCloseTo(1.6 * 25, 9)
    expect(look('2026-05-04T13:30:00Z').gustKmh.spread).toBeCloseTo(12 * Math.sqrt(1 + 1.5 / 24), 9)
  })

  it('never puts a gust below the mean wind', () => {
    expect(look('2026-05-04T12:00:00Z').gustKmh).toMatchObject({ value: 18, spread: 8 })
    expect(look('2026-05-04T12:54:00Z').gustKmh.value).toBeCloseTo(19, 9)
  })

  it('takes the dew point from air and humidity, and never above the air', () => {
    expect(look('2026-05-04T12:00:00Z').dewPointC.value).toBeCloseTo(dewPointC(10, 80), 9)
    expect(look('2026-05-04T14:00:00Z').dewPointC.value).toBe(16)
  })

  it('takes the humidity from air and dew point', () => {
    const dewOnly = forecastOf(at0, [hour(at0, { airC: 20, dewPointC: dewPointC(20, 55) })])
    expect(weatherAt(dewOnly, iso(at0), iso(at0), spread).rhPct.value).toBeCloseTo(55, 4)
  })

  it('propagates the spreads of air and humidity to the dew point', () => {
    // Checked against 20,000 drawn states (linear congruential numbers, Box–Muller): first order is enough here.
    const got = weatherAt(forecast, iso(at0), iso(at0), { ...spread, rhPct: 4 }).dewPointC.spread
    const drawn = deviation(10, 80, 1.5, 4)
    expect(Math.abs(got / drawn - 1)).toBeLessThan(0.03)
  })

  it('has a dew point that does not hang on humidity at all where that has no spread', () => {
    const exact = weatherAt(forecast, iso(at0), iso(at0), { ...spread, rhPct: 0, airK: 1 })
    // Slope of the dew point by the air at constant humidity, Magnus set of WMO-No. 8: (243.12 + 6.707)² ÷ (243.12 + 10)² = 0.974.
    expect(exact.dewPointC.spread).toBeCloseTo(0.974, 2)
  })
})

describe('weatherAt: age', () => {
  it('widens by √(1 + lead ÷ 24 h), never narrows', () => {
    expect(look('2026-05-04T14:00:00Z').airC.spread).toBeCloseTo(1.5 * Math.sqrt(1 + 2 / 24), 9)
    const late = forecastOf('2026-05-04T14:00:00Z', forecast.hours)
    expect(weatherAt(late, iso(at0), iso(at0), spread).airC.spread).toBe(1.5)
  })

  it.each([
    ['2026-05-04T15:00:00Z', false, 1],
    ['2026-05-04T15:00:01Z', true, 2],
    ['2026-05-05T00:00:00Z', true, 2]
  ])('as of %s: stale %s, spread × %i', (now, stale, times) => {
    const weather = look(at0, now)
    expect(weather.airC).toMatchObject({ value: 10, stale, spread: 1.5 * times })
    expect(weather.windKmh).toMatchObject({ stale, spread: 5 * times })
    expect(weather.rainMm).toBe(2)
  })

  it('says nothing when issued more than 12 h ago', () => {
    const weather = look(at0, '2026-05-05T00:00:01Z')
    for (const fact of [weather.airC, weather.dewPointC, weather.gustKmh, weather.sunWm2]) {
      expect(fact).toEqual({ value: null, at: null, origin: null, spread: 0, stale: true })
    }
    expect(weather).toMatchObject({ rainMm: null, rainChancePct: null, thunder: null })
  })
})

/** Standard deviation of the dew point over drawn states. */
function deviation(airC: number, rhPct: number, airK: number, rhK: number): number {
  let seed = 1
  const uniform = () => {
    seed = (seed * 1103515245 + 12345) % 2147483648
    return (seed + 0.5) / 2147483648
  }
  const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform())
  const drawn = Array.from({ length: 20000 }, () => dewPointC(airC + airK * normal(), Math.min(100, rhPct + rhK * normal())))
  const mean = drawn.reduce((sum, value) => sum + value, 0) / drawn.length
  return Math.sqrt(drawn.reduce((sum, value) => sum + (value - mean) ** 2, 0) / drawn.length)
}
