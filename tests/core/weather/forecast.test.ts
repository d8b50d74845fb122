import { createHash } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { toIso } from '../../../src/core/instant.js'
import { canonical } from '../../../src/core/log/canonical.js'
import { forecastBody, hoursOfBody } from '../../../src/core/weather/body.js'
import { mergeHours } from '../../../src/core/weather/hours.js'
import { groundHpa } from '../../../src/core/weather/pressure.js'
import { forecastOf, hour } from '../../support/hours.js'
import { iso } from '../../support/instant.js'

const full = hour('2026-05-04T12:00:00Z', {
  airC: 12.34,
  rhPct: 80,
  dewPointC: -0.5,
  windKmh: 3.704,
  cloudPct: 1e-6,
  rainMm: 0,
  rainChancePct: 100,
  thunder: true,
  sunWm2: 431.5
})

describe('makeForecast', () => {
  it('sorts the hours and keeps each once, value by value', () => {
    const made = forecastOf('2026-05-04T12:00:00Z', [
      hour('2026-05-04T14:00:00Z', { airC: 3 }),
      full,
      hour('2026-05-04T12:00:00Z', { airC: 9, gustKmh: 20 })
    ])
    expect(made.hours.map((one) => toIso(one.at))).toEqual(['2026-05-04T12:00:00Z', '2026-05-04T14:00:00Z'])
    expect(made.hours[0]).toEqual({ ...full, airC: 9, gustKmh: 20 })
  })

  it('hashes the canonical JSON of the hours with ISO instants', () => {
    const hours = [full, hour('1999-12-31T23:30:00Z', { airC: -0 }), hour('2026-05-04T23:00:00Z')]
    const made = forecastOf('2026-05-04T12:00:00Z', hours)
    // RFC 8785 by the canonicalize package, SHA-256 by node:crypto.
    const text = canonical(made.hours.map((one) => ({ ...one, at: toIso(one.at) })))
    expect(forecastBody(made.hours)).toBe(text)
    expect(made.sha256).toBe(createHash('sha256').update(text, 'utf8').digest('hex'))
  })

  it('has the same hash for the same hours in any order, another for another value', () => {
    const hours = [full, hour('2026-05-04T13:00:00Z', { airC: 1 })]
    const sha = forecastOf('2026-05-04T12:00:00Z', hours).sha256
    expect(forecastOf('2026-05-04T18:00:00Z', [...hours].reverse()).sha256).toBe(sha)
    expect(forecastOf('2026-05-04T12:00:00Z', [{ ...full, airC: 12.35 }]).sha256).not.toBe(sha)
  })

  it.each([
    ['airC', 999],
    ['rhPct', 0],
    ['rhPct', 101],
    ['windKmh', -1],
    ['rainMm', -0.1],
    ['rainChancePct', 120],
    ['sunWm2', Number.NaN],
    ['pressureHpa', 0],
    ['gustKmh', Number.POSITIVE_INFINITY]
  ] as const)('takes an impossible %s of %s for not given', (name, value) => {
    expect(forecastOf('2026-05-04T12:00:00Z', [{ ...full, [name]: value }]).hours[0]?.[name]).toBeNull()
  })

  it('reads its body back', () => {
    const { hours } = forecastOf('2026-05-04T12:00:00Z', [full, hour('2026-05-04T13:00:00Z')])
    expect(hoursOfBody(forecastBody(hours))).toEqual(hours)
    expect(hoursOfBody('{}')).toBeNull()
  })
})

describe('mergeHours', () => {
  it('lets a null of the newer answer leave what was known', () => {
    const merged = mergeHours([full], [hour('2026-05-04T12:00:00Z', { airC: 1, thunder: false }), hour('2026-05-04T11:00:00Z')])
    expect(merged).toEqual([hour('2026-05-04T11:00:00Z'), { ...full, airC: 1, thunder: false }])
    expect(merged[0]?.at).toBe(iso('2026-05-04T11:00:00Z'))
  })
})

describe('groundHpa', () => {
  it.each([
    // ICAO standard atmosphere, tabulated pressures (from memory): 1000 m 898.75, 2000 m 794.95, −500 m 1074.78 hPa.
    [1000, 898.75],
    [2000, 794.95],
    [-500, 1074.78],
    [0, 1013.25]
  ])('at %i m', (heightM, hpa) => {
    expect(Math.abs((groundHpa(1013.25, heightM) ?? Number.NaN) - hpa)).toBeLessThan(0.05)
  })

  it('refuses heights beyond its range', () => {
    expect(groundHpa(1013, 9001)).toBeNull()
    expect(groundHpa(1013, Number.NaN)).toBeNull()
  })
})
