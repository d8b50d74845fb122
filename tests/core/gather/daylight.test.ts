import { describe, expect, it } from 'vitest'
import { daylight, sunEvents } from '../../../src/core/gather/daylight.js'
import { localDate } from '../../../src/core/instant.js'
import { iso } from '../../support/instant.js'

const berlin = { lat: 50, lon: 8, zone: 'Europe/Berlin' }

function at(place: typeof berlin, text: string) {
  const now = iso(text)
  return daylight(sunEvents(place, localDate(now, place.zone)), now, 60)
}

describe('daylight', () => {
  it('counts the minutes to sunset less the closing-up time, and is negative after it', () => {
    const events = sunEvents(berlin, '2026-05-04')
    const set = events.sets.find((each) => each > iso('2026-05-04T10:00:00Z')) as number

    expect(daylight(events, set - 3600, 60)).toEqual({ sunUp: true, daylightMin: 0 })
    expect(daylight(events, set - 3601, 60).daylightMin).toBeCloseTo(1 / 60, 9)
    expect(daylight(events, set - 1, 60).sunUp).toBe(true)
    expect(daylight(events, set + 60, 60)).toEqual({ sunUp: false, daylightMin: -61 })
  })

  it('is down before sunrise, counted from the last sunset, across local midnight too', () => {
    const before = at(berlin, '2026-05-04T21:59:00Z')
    const after = at(berlin, '2026-05-04T22:01:00Z')

    expect(before.sunUp).toBe(false)
    expect(after.sunUp).toBe(false)
    expect((before.daylightMin as number) - (after.daylightMin as number)).toBeCloseTo(2, 6)
  })

  it('never ends in the midnight sun and never begins in the polar night', () => {
    const north = { lat: 78, lon: 15, zone: 'Arctic/Longyearbyen' }

    expect(at(north, '2026-06-21T12:00:00Z')).toEqual({ sunUp: true, daylightMin: null })
    expect(at(north, '2026-12-21T12:00:00Z')).toEqual({ sunUp: false, daylightMin: null })
  })

  it('holds where the local day is another one than in Greenwich', () => {
    const west = { lat: 21, lon: -157, zone: 'Pacific/Honolulu' }
    const east = { lat: -36, lon: 174, zone: 'Pacific/Auckland' }

    expect(at(west, '2026-05-05T01:00:00Z').sunUp).toBe(true)
    expect(at(west, '2026-05-04T10:00:00Z').sunUp).toBe(false)
    expect(at(east, '2026-05-04T01:00:00Z').sunUp).toBe(true)
    expect(at(east, '2026-05-04T12:00:00Z').sunUp).toBe(false)
  })
})
