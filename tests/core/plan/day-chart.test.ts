import { describe, expect, test } from 'vitest'
import { dayChart, extremesOf, isEmpty, type Point, rainPeaks } from '../../../src/core/plan/day-chart.js'
import { demoSite } from '../../../src/core/site.js'
import { emptyDayChart, noBands, noSeries } from '../../support/day-pictures.js'
import { iso } from '../../support/instant.js'

const midnight = iso('2026-05-03T22:00:00Z')
const h = (hours: number) => midnight + hours * 3600

describe('the local day of a picture', () => {
  test('runs from midnight to midnight, with a mark at every full hour in between', () => {
    const { from, to, hours } = emptyDayChart()
    expect([from, to]).toEqual([midnight, h(24)])
    expect(hours.map(({ hour }) => hour)).toEqual(Array.from({ length: 23 }, (_, index) => index + 1))
  })

  // Last Sundays of March and October: Directive 2000/84/EC. The clocks change at 01:00 UTC.
  test.each([
    ['2026-03-29', 23, [1, 3, 4]],
    ['2026-10-25', 25, [1, 2, 2]]
  ] as const)('%s has %i hours', (date, length, first) => {
    const { from, to, hours } = emptyDayChart({ date })
    expect((to - from) / 3600).toBe(length)
    expect(hours.slice(0, 3).map(({ hour }) => hour)).toEqual(first)
    expect(hours).toHaveLength(length - 1)
  })

  // Lord Howe Island moves its clocks by half an hour: IANA time zone database, file australasia.
  test('where clocks move by half an hour the marks stay on full hours', () => {
    const { hours, from, to } = emptyDayChart({ date: '2026-10-04', settings: { ...demoSite, zone: 'Australia/Lord_Howe' } })
    expect((to - from) / 3600).toBe(23.5)
    expect(hours.map(({ hour }) => hour).slice(0, 3)).toEqual([1, 3, 4])
  })

  test('a date that is none has no picture', () => {
    const sun = { sunriseAt: null, sunsetAt: null, always: null }
    expect(
      dayChart({ site: 'demo', settings: demoSite, date: '2026-02-30', now: null, bands: noBands, series: noSeries, sun, sample: false })
    ).toBeNull()
  })

  test('cuts bands, points and rain to the day, and leaves out a now of another day', () => {
    const chart = emptyDayChart({
      now: h(24),
      bands: {
        ...noBands,
        spray: [
          { from: h(-2), to: h(1), outcome: 'go' },
          { from: h(25), to: h(26), outcome: 'caution' }
        ]
      },
      series: {
        ...noSeries,
        airC: [-1, 0, 12, 24, 25].map((each) => ({ at: h(each), value: each })),
        rain: [{ from: h(23.5), to: h(24.5), mmPerHour: 1, chancePct: 50 }]
      }
    })
    expect(chart.now).toBeNull()
    expect(emptyDayChart({ now: h(0) }).now).toBe(h(0))
    expect(chart.rows.map(({ activity }) => activity)).toEqual(['spray', 'lay', 'weld', 'people'])
    expect(chart.rows[0]?.bands).toEqual([{ from: h(0), to: h(1), outcome: 'go' }])
    expect(chart.airC.map(({ value }) => value)).toEqual([0, 12, 24])
    expect(chart.rain).toEqual([{ from: h(23.5), to: h(24), mmPerHour: 1, chancePct: 50 }])
  })

  test('what is no number is a gap', () => {
    const values = [Number.NaN, Number.POSITIVE_INFINITY, null, 3]
    const chart = emptyDayChart({ series: { ...noSeries, windKmh: values.map((value, index) => ({ at: h(index), value })) } })
    expect(chart.windKmh.map(({ value }) => value)).toEqual([null, null, null, 3])
  })
})

describe('extremes', () => {
  const points = (...values: (number | null)[]): readonly Point[] => values.map((value, index) => ({ at: index, value }))

  test('are where they are reached first', () => {
    expect(extremesOf(points(null, 4, 2, 2, 9, 9))).toEqual({ min: { at: 2, value: 2 }, max: { at: 4, value: 9 } })
    expect(extremesOf(points(-3))).toEqual({ min: { at: 0, value: -3 }, max: { at: 0, value: -3 } })
  })

  test('of nothing are none', () => {
    expect(extremesOf([])).toBeNull()
    expect(extremesOf(points(null, null))).toBeNull()
    expect(rainPeaks([{ from: 0, to: 1, mmPerHour: null, chancePct: null }])).toEqual({ mmPerHour: null, chancePct: null })
  })

  test('rain has one for the amount and one for the chance', () => {
    const rain = [
      { from: 0, to: 1, mmPerHour: 0.2, chancePct: 80 },
      { from: 1, to: 2, mmPerHour: 3, chancePct: null }
    ]
    expect(rainPeaks(rain)).toEqual({ mmPerHour: { at: 1, value: 3 }, chancePct: { at: 0, value: 80 } })
  })

  test('a day is empty until one line or bar has a value', () => {
    expect(isEmpty(noSeries)).toBe(true)
    expect(isEmpty({ ...noSeries, airC: points(null) })).toBe(true)
    expect(isEmpty({ ...noSeries, gustKmh: points(1) })).toBe(false)
    expect(isEmpty({ ...noSeries, rain: [{ from: 0, to: 1, mmPerHour: 0, chancePct: null }] })).toBe(false)
  })
})
