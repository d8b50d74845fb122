import { describe, expect, test } from 'vitest'
import { daySeries } from '../../../src/core/plan/day-series.js'
import { emptyHour } from '../../../src/core/weather/hour.js'
import { sheet } from '../../support/facts.js'
import { forecastOf } from '../../support/hours.js'
import { iso } from '../../support/instant.js'

const from = iso('2026-05-03T22:00:00Z')
const to = from + 24 * 3600
const { spread } = sheet()

/** An hourly forecast of the whole day: air rises by 1 °C an hour, the gust of each hour is ten times its number. */
const forecast = forecastOf(
  '2026-05-03T21:00:00Z',
  Array.from({ length: 26 }, (_, index) => ({
    ...emptyHour(from + index * 3600),
    ...{ airC: index, dewPointC: index - 5, windKmh: 10, gustKmh: index * 10, rainMm: index === 5 ? 2 : 0, rainChancePct: index }
  }))
)

describe('lines and bars of a forecast', () => {
  const series = daySeries(forecast, null, from, from, to, spread)

  test('instants in a straight line between the hours', () => {
    expect(series.airC).toHaveLength(49)
    expect(series.airC.slice(0, 3).map(({ value }) => value)).toEqual([0, 0.5, 1])
    expect(series.airC.at(-1)).toEqual({ at: to, value: 24 })
    expect(series.dewPointC[2]?.value).toBe(-4)
  })

  test('the gust of an hour stands at its middle', () => {
    expect(series.gustKmh).toHaveLength(24)
    expect(series.gustKmh[0]).toEqual({ at: from + 1800, value: 10 })
    expect(series.gustKmh.at(-1)).toEqual({ at: to - 1800, value: 240 })
  })

  test('rain belongs to the hour that ends then', () => {
    expect(series.rain).toHaveLength(24)
    expect(series.rain.find(({ mmPerHour }) => mmPerHour === 2)).toEqual({ from: from + 4 * 3600, to: from + 5 * 3600, mmPerHour: 2, chancePct: 5 })
  })

  test('says nothing of a surface that was not reckoned, nor anything without a forecast or by one older than 12 h', () => {
    expect(series.substrateC).toBeNull()
    for (const nothing of [daySeries(null, null, from, from, to, spread), daySeries(forecast, null, from + 13 * 3600, from, to, spread)]) {
      expect([...nothing.airC, ...nothing.gustKmh, ...nothing.windKmh].every(({ value }) => value === null)).toBe(true)
      expect(nothing.rain).toEqual([])
    }
  })

  test('is bounded, whatever it is asked for', () => {
    expect(daySeries(forecast, null, from, from, from + 1e9, spread).airC.length).toBeLessThanOrEqual(53)
    expect(daySeries(forecast, null, from, to, from, spread).airC).toHaveLength(1)
  })
})
