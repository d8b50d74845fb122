import { DateTime } from 'luxon'
import { describe, expect, it } from 'vitest'
import { sampleForecast } from '../../../../src/adapters/weather/sample/index.js'
import { week } from '../../../../src/adapters/weather/sample/week.js'
import { dewPointC } from '../../../../src/core/physics/air.js'
import { rainAhead, thunderAhead } from '../../../../src/core/weather/rain.js'
import { iso } from '../../../support/instant.js'

const zone = 'Europe/Berlin'
/** 2026-05-04 is a Monday. */
const monday = DateTime.fromISO('2026-05-04T00:00', { zone })
const local = (weekday: number, clock: number) =>
  monday
    .plus({ days: weekday - 1 })
    .set({ hour: clock })
    .toSeconds()
const hourAt = (weekday: number, clock: number) => {
  const at = local(weekday, clock)
  const hour = sampleForecast(at, zone).hours.find((one) => one.at === at)
  if (hour === undefined) throw new Error('no such hour')
  return hour
}

describe('sampleForecast', () => {
  it('covers 36 h back and 60 h ahead, issued at the full hour, and says that it is invented', () => {
    const forecast = sampleForecast(iso('2026-05-04T06:10:59Z'), zone)
    expect(forecast).toMatchObject({ source: 'sample', sample: true, issuedAt: iso('2026-05-04T06:00:00Z') })
    expect(forecast.hours).toHaveLength(97)
    expect(forecast.hours[0]?.at).toBe(iso('2026-05-02T18:00:00Z'))
    expect(forecast.hours.at(-1)?.at).toBe(iso('2026-05-06T18:00:00Z'))
  })

  it('is the same for the same hour, and another for another zone', () => {
    const one = sampleForecast(iso('2026-05-04T06:10:00Z'), zone)
    sampleForecast(iso('2026-05-05T06:10:00Z'), zone)
    expect(sampleForecast(iso('2026-05-04T06:59:59Z'), zone)).toEqual(one)
    expect(sampleForecast(iso('2026-05-04T06:10:00Z'), 'America/New_York').sha256).not.toBe(one.sha256)
  })

  it('repeats every week', () => {
    const values = (at: number) => sampleForecast(at, zone).hours.map(({ at: _, ...rest }) => rest)
    expect(values(local(3, 9) + 7 * 86400)).toEqual(values(local(3, 9)))
  })

  it.each(['2026-03-28T12:00:00Z', '2026-10-24T12:00:00Z'])('has every hour once over the night clocks change after %s', (at) => {
    const { hours } = sampleForecast(iso(at), zone)
    expect(hours).toHaveLength(97)
    for (const [index, hour] of hours.entries()) expect(hour.at).toBe((hours[0]?.at ?? 0) + index * 3600)
  })

  it('is air that can be: dew point below the air and in step with the humidity, no jumps', () => {
    for (let day = 1; day <= 7; day += 1) {
      for (const [index, hour] of sampleForecast(local(day, 0), zone).hours.entries()) {
        const airC = hour.airC ?? Number.NaN
        expect(hour.dewPointC).toBeLessThan(airC)
        expect(Math.abs(dewPointC(airC, hour.rhPct ?? Number.NaN) - (hour.dewPointC ?? Number.NaN))).toBeLessThan(0.001)
        expect(hour.gustKmh).toBeGreaterThan(hour.windKmh ?? Number.NaN)
        const before = sampleForecast(local(day, 0), zone).hours[index - 1]
        if (before) expect(Math.abs(airC - (before.airC ?? Number.NaN))).toBeLessThan(5)
      }
    }
  })

  it('leaves the sun to its true height', () => {
    expect(hourAt(1, 12)).toMatchObject({ sunWm2: null, pressureHpa: null })
  })
})

describe('the stories of the week', () => {
  it('has seven, each its own', () => {
    expect(new Set(week.map((day) => day.story.split(':')[0])).size).toBe(7)
  })

  it('Monday: dry, mild, light wind', () => {
    for (let clock = 7; clock <= 18; clock += 1) {
      const hour = hourAt(1, clock)
      expect(hour).toMatchObject({ rainMm: 0, thunder: false })
      expect(hour.windKmh).toBeLessThan(15)
      expect(hour.gustKmh).toBeLessThan(25)
      expect(hour.airC).toBeGreaterThan(10)
    }
  })

  it('Tuesday: near the dew point at dawn under a clear sky', () => {
    const dawn = hourAt(2, 5)
    expect((dawn.airC ?? 0) - (dawn.dewPointC ?? 0)).toBeLessThan(1)
    expect(dawn.cloudPct).toBeLessThan(20)
  })

  it('Wednesday: hot, then thunder', () => {
    expect(hourAt(3, 15).airC).toBe(32)
    expect(thunderAhead(sampleForecast(local(3, 14), zone), local(3, 14), local(3, 14))).toEqual({ thisHour: false, within2h: true })
  })

  it('Thursday: too windy to lay', () => {
    expect(hourAt(4, 12).windKmh).toBeGreaterThan(37)
    expect(hourAt(4, 12).rainMm).toBe(0)
  })

  it('Friday: rain by noon, told before', () => {
    expect(rainAhead(sampleForecast(local(5, 6), zone), local(5, 6), local(5, 6), 120).chancePct).toBeLessThan(20)
    expect(rainAhead(sampleForecast(local(5, 6), zone), local(5, 6), local(5, 11), 60)).toEqual({ chancePct: 85, amountMm: 0.8 })
  })

  it('Saturday: grey and damp', () => {
    const noon = hourAt(6, 12)
    expect(noon.cloudPct).toBe(100)
    expect((noon.airC ?? 0) - (noon.dewPointC ?? 0)).toBeLessThan(3)
  })

  it('Sunday: cold and clear', () => {
    expect(hourAt(7, 5).airC).toBe(1.5)
    expect(hourAt(7, 6).cloudPct).toBeLessThan(10)
  })
})
