import { DateTime } from 'luxon'
import { describe, expect, it } from 'vitest'
import { dayMarks, fromIso, localDate, localTime, toIso } from '../../src/core/instant.js'
import { seeded } from '../support/random-log.js'

const zones = Intl.supportedValuesOf('timeZone')

describe('instants', () => {
  it.each([
    ['2026-05-04T06:10:00Z', 1_777_875_000],
    ['2026-05-04T08:10:00+02:00', 1_777_875_000],
    ['2026-05-04T06:10:00.999Z', 1_777_875_000],
    ['1970-01-01T00:00:00Z', 0],
    ['2028-02-29T23:59:59Z', 1_835_481_599]
  ])('read %s', (text, at) => {
    expect(fromIso(text)).toBe(at)
  })

  it.each([
    '2026-05-04T06:10:00',
    '2026-05-04',
    '2026-02-30T00:00:00Z',
    '2026-13-01T00:00:00Z',
    '2026-05-04T24:00:01Z',
    '',
    'now',
    '2026-05-04T06:10:00+2'
  ])('refuse %s', (text) => {
    expect(fromIso(text)).toBeNull()
  })

  it('come back from their own text', () => {
    const random = seeded(1)
    for (let i = 0; i < 1000; i += 1) {
      const at = Math.floor(random() * 4_000_000_000)
      expect(fromIso(toIso(at))).toBe(at)
    }
  })

  it('have the local date and time that luxon gives, in every zone, on the quarters beside each change of the clocks too', () => {
    const random = seeded(2)
    for (const zone of zones) {
      const anyTime = Array.from({ length: 20 }, () => 1_577_836_800 + Math.floor(random() * 3650 * 86_400))
      for (const at of [...anyTime, ...aroundChanges(zone, 2026)]) {
        const local = DateTime.fromSeconds(at, { zone })
        expect(`${localDate(at, zone)} ${localTime(at, zone)}`, `${zone} ${toIso(at)}`).toBe(local.toFormat('yyyy-MM-dd HH:mm'))
      }
    }
  })

  it('know noon and the midnight that ends a day, where a day has 23, 24 or 25 hours', () => {
    expect(dayMarks('2026-03-29', 'Europe/Berlin')).toEqual({ noon: fromIso('2026-03-29T10:00:00Z'), midnight: fromIso('2026-03-29T22:00:00Z') })
    expect(dayMarks('2026-10-25', 'Europe/Berlin')).toEqual({ noon: fromIso('2026-10-25T11:00:00Z'), midnight: fromIso('2026-10-25T23:00:00Z') })
    expect(dayMarks('2026-05-04', 'Asia/Kolkata')).toEqual({ noon: fromIso('2026-05-04T06:30:00Z'), midnight: fromIso('2026-05-04T18:30:00Z') })
  })
})

/** Seconds around every change of the offset in a year, found by halving between days that differ. */
function aroundChanges(zone: string, year: number): number[] {
  const offset = (at: number) => DateTime.fromSeconds(at, { zone }).offset
  const start = DateTime.fromObject({ year }, { zone: 'utc' }).toSeconds()
  const found: number[] = []
  for (let day = 0; day < 365; day += 5) {
    let low = start + day * 86_400
    let high = low + 5 * 86_400
    if (offset(low) === offset(high)) continue
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2)
      if (offset(middle) === offset(low)) low = middle
      else high = middle
    }
    found.push(low - 1, low, high, high + 1)
  }
  return found
}

it('tells each instant by itself, whatever was asked before', () => {
  const seconds = [0, 1, 1, 59, 60, 0, 1.9]
  const times = ['00:00:00', '00:00:01', '00:00:01', '00:00:59', '00:01:00', '00:00:00', '00:00:01']
  expect(seconds.map(toIso)).toEqual(times.map((time) => `1970-01-01T${time}Z`))
})
