import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { rainAhead, thunderAhead } from '../../../src/core/weather/rain.js'
import { forecastOf, hour } from '../../support/hours.js'
import { iso } from '../../support/instant.js'

const noon = '2026-05-04T12:00:00Z'
const forecast = forecastOf(noon, [
  hour('2026-05-04T12:00:00Z', { rainChancePct: 100, rainMm: 9, thunder: false }),
  hour('2026-05-04T13:00:00Z', { rainChancePct: 20, rainMm: 0.1, thunder: false }),
  hour('2026-05-04T14:00:00Z', { rainChancePct: 50, rainMm: 0.2, thunder: false }),
  hour('2026-05-04T15:00:00Z', { rainChancePct: 0, rainMm: null, thunder: true }),
  hour('2026-05-04T16:00:00Z', { rainChancePct: null, rainMm: 1, thunder: null })
])
const ahead = (from: string, minutes: number, now = noon) => rainAhead(forecast, iso(now), iso(from), minutes)

describe('rainAhead', () => {
  it.each([
    ['one hour from the full hour', noon, 60, 20, 0.1],
    ['a second more touches the next', noon, 61, 60, 0.3],
    ['from half past', '2026-05-04T12:30:00Z', 60, 60, 0.3],
    ['no time at all still has the hour it is in', noon, 0, 20, 0.1],
    ['an hour without an amount', noon, 180, 60, null],
    ['an hour without a chance', noon, 240, null, null],
    ['without both beyond the last hour', '2026-05-04T15:30:00Z', 60, null, null],
    ['before the first hour', '2026-05-04T10:30:00Z', 60, null, null],
    ['a wrong length', noon, Number.NaN, null, null],
    ['a negative length', noon, -1, null, null]
  ])('%s', (_, from, minutes, chancePct, amountMm) => {
    expect(ahead(from, minutes)).toEqual({ chancePct, amountMm })
  })

  it('says nothing over a hole in the hours', () => {
    const holed = forecastOf(noon, [
      hour('2026-05-04T13:00:00Z', { rainChancePct: 1, rainMm: 0 }),
      hour('2026-05-04T15:00:00Z', { rainChancePct: 1, rainMm: 0 })
    ])
    expect(rainAhead(holed, iso(noon), iso(noon), 60)).toEqual({ chancePct: 1, amountMm: 0 })
    expect(rainAhead(holed, iso(noon), iso(noon), 90)).toEqual({ chancePct: null, amountMm: null })
  })

  it('says nothing without a forecast or of one older than 12 h', () => {
    const nothing = { chancePct: null, amountMm: null }
    expect(rainAhead(null, iso(noon), iso(noon), 60)).toEqual(nothing)
    expect(ahead(noon, 60, '2026-05-05T00:00:00Z')).toEqual({ chancePct: 20, amountMm: 0.1 })
    expect(ahead(noon, 60, '2026-05-05T00:00:01Z')).toEqual(nothing)
  })

  it('is never below the largest chance nor above their sum, and does not fall as time goes on', () => {
    // Boole's inequality and monotony of a union of events.
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 1, maxLength: 12 }), (chances) => {
        const many = forecastOf(
          noon,
          chances.map((rainChancePct, index) => ({ ...hour(noon), at: iso(noon) + (index + 1) * 3600, rainChancePct }))
        )
        const got = chances.map((_, index) => rainAhead(many, iso(noon), iso(noon), (index + 1) * 60).chancePct ?? Number.NaN)
        const total = got.at(-1) ?? Number.NaN
        expect(total).toBeGreaterThanOrEqual(Math.max(...chances) - 1e-6)
        expect(total).toBeLessThanOrEqual(
          Math.min(
            100,
            chances.reduce((sum, one) => sum + one, 0)
          ) + 1e-6
        )
        for (const [index, chance] of got.entries()) expect(chance).toBeGreaterThanOrEqual(got[index - 1] ?? 0)
      })
    )
  })
})

describe('thunderAhead', () => {
  it.each([
    [noon, false, false],
    ['2026-05-04T12:00:01Z', false, true],
    ['2026-05-04T14:30:00Z', true, true],
    ['2026-05-04T15:00:00Z', null, null],
    ['2026-05-04T11:00:00Z', false, false],
    ['2026-05-04T09:00:00Z', null, null]
  ])('from %s', (from, thisHour, within2h) => {
    expect(thunderAhead(forecast, iso(noon), iso(from))).toEqual({ thisHour, within2h })
  })

  it('says nothing without a forecast or of one older than 12 h', () => {
    expect(thunderAhead(null, iso(noon), iso(noon))).toEqual({ thisHour: null, within2h: null })
    expect(thunderAhead(forecast, iso('2026-05-05T00:00:01Z'), iso(noon))).toEqual({ thisHour: null, within2h: null })
  })
})
