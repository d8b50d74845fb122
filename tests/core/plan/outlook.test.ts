import { describe, expect, test } from 'vitest'
import { sampleForecast } from '../../../src/adapters/weather/sample/index.js'
import { roofOf } from '../../../src/core/gather/roof-of.js'
import { localTime } from '../../../src/core/instant.js'
import { outlook, roofOfDay } from '../../../src/core/plan/outlook.js'
import { emptyHour, type Hour } from '../../../src/core/weather/hour.js'
import { mergeHours } from '../../../src/core/weather/hours.js'
import { sheet } from '../../support/facts.js'
import { forecastOf } from '../../support/hours.js'
import { iso } from '../../support/instant.js'
import { emptyMemory } from '../../support/memory.js'

const date = '2026-05-04'
/** 05:30 in Berlin. */
const now = iso('2026-05-04T03:30:00Z')
const zone = 'Europe/Berlin'

const calm: Partial<Hour> = { airC: 14, rhPct: 50, windKmh: 2, gustKmh: 4, cloudPct: 20, rainMm: 0, rainChancePct: 0, thunder: false }

/** Hours of the day, all calm but for what `change` says by the local hour that begins. */
function day(change: (localHour: number) => Partial<Hour> = () => ({}), until = '2026-05-05T00:00:00Z', issuedAt = '2026-05-04T03:00:00Z') {
  const hours: Hour[] = []
  for (let at = iso('2026-05-04T00:00:00Z'); at <= iso(until); at += 3600) {
    hours.push({ ...emptyHour(at), ...calm, ...change(Number(localTime(at - 3600, zone).slice(0, 2))) })
  }
  return forecastOf(issuedAt, hours)
}

/** Without a model of the roof: what it adds stands in tests/core/roof. */
function look(forecast: ReturnType<typeof day> | null, at = now, memory = emptyMemory()) {
  return outlook(memory, forecast, sheet(), date, at, null)
}

function times(windows: readonly { readonly from: number; readonly to: number; readonly outcome: string }[]): readonly string[] {
  return windows.map(({ from, to, outcome }) => `${localTime(from, zone)}-${localTime(to, zone)} ${outcome}`)
}

describe('the outlook of a day', () => {
  test('a calm day goes from sunrise to the closing-up time; what only a reading knows is set aside and listed', () => {
    const { activities, known, hazards } = look(day())
    expect(known).toBe(true)
    expect(activities.spray.outcome).toBe('go')
    // The sun rises before 06:00 and sets about 20:49 there (sun times are checked against NOAA in their own test): less 60 min to
    // close up and 30 min that are a caution, the quarter from 19:15 is the last that goes.
    expect(times(activities.spray.windows)).toEqual(['06:00-19:30 go'])
    expect(activities.spray.windows[0]).toMatchObject({ opens: 'daylight', closes: 'daylight' })
    expect(activities.spray.toRead).toEqual([
      { rule: 'dew-margin', fix: 'read:substrate' },
      { rule: 'kit-temperature', fix: 'read:kit' },
      { rule: 'substrate-temperature', fix: 'read:substrate' }
    ])
    expect(activities.weld.toRead).toEqual([{ rule: 'dew-margin', fix: 'read:sheet' }])
    expect(activities.lay.toRead).toEqual([])
    expect(activities.people.outcome).toBe('go')
    expect(hazards).toEqual([])
  })

  test('no forecast: unknown, no window, and nothing is known', () => {
    const { activities, known, airC, gustKmh, rainChancePct } = look(null)
    expect(known).toBe(false)
    for (const { outcome, windows } of Object.values(activities)) expect([outcome, windows]).toEqual(['unknown', []])
    expect([airC, gustKmh, rainChancePct]).toEqual([null, null, null])
  })

  test('a forecast issued more than 12 h before says nothing; the afternoon of a fresh one is not called old', () => {
    expect(look(day(() => ({}), '2026-05-05T00:00:00Z', '2026-05-03T15:00:00Z')).known).toBe(false)
    // 20:00 lies 17 h after the issue: the age counts from now.
    expect(look(day()).activities.weld.bands.some(({ outcome }) => outcome === 'unknown')).toBe(false)
  })

  test('an estimate too near a limit is unknown, more so later in the day', () => {
    // Mean wind limit for people 37 km/h, spread 5 km/h × √(1 + lead / 24 h), 1.645 of it.
    const margin = (leadH: number) => 1.645 * 5 * Math.sqrt(1 + leadH / 24)
    const windKmh = 37 - (margin(3) + margin(16)) / 2
    const { people } = look(day(() => ({ windKmh, gustKmh: windKmh }))).activities
    expect(people.bands.map(({ outcome }) => outcome)).toEqual(['caution', 'unknown'])
    const leadH = (((37 - windKmh) / 1.645 / 5) ** 2 - 1) * 24
    const turn = iso('2026-05-04T03:00:00Z') + leadH * 3600
    expect(Math.abs((people.bands[1]?.from ?? 0) - turn)).toBeLessThanOrEqual(900)
  })

  test('rain shuts a window; what binds is named', () => {
    const { spray, weld } = look(day((hour) => (hour >= 12 ? { rainMm: 2, rainChancePct: 90 } : {}))).activities
    // An hour before the rain of 12:00 the hour to close up reaches into it.
    expect(times(spray.windows)).toEqual(['06:00-11:15 go'])
    expect(spray.windows[0]?.closes).toBe('rain-coming')
    // Rain coming never stops welding; rain falling does.
    expect(times(weld.windows)).toEqual(['06:00-12:00 go'])
    expect(weld.windows[0]?.closes).toBe('rain-now')
  })

  test('without any window: no-go, and the rule that stops most of the day', () => {
    const { spray } = look(day(() => ({ gustKmh: 90, windKmh: 70 }))).activities
    expect(spray.outcome).toBe('no-go')
    expect(spray.windows).toEqual([])
    expect(['wind-gust', 'wind-mean']).toContain(spray.binding?.rule)
    expect(spray.binding).toMatchObject({ outcome: 'no-go', origin: 'forecast' })
  })

  test('thunder keeps people off, and with them all work; a caution two hours ahead', () => {
    const { activities, hazards } = look(day((hour) => (hour >= 14 && hour < 16 ? { thunder: true } : {})))
    expect(times(activities.people.windows)).toEqual(['05:30-12:15 go', '12:15-14:00 caution', '16:00-21:00 go'])
    expect(times(activities.weld.windows)).toEqual(['06:00-14:00 go', '16:00-19:30 go'])
    expect(activities.weld.windows[0]?.closes).toBe('thunder')
    expect(hazards.map(({ finding, from, to }) => [finding.rule, finding.outcome, localTime(from, zone), localTime(to, zone)])).toEqual([
      ['thunder', 'no-go', '12:15', '16:00']
    ])
  })

  test('heat and cold of the day are hazards', () => {
    const hot = look(day((hour) => ({ airC: hour < 8 || hour > 20 ? 15 : 43, rhPct: 60 })))
    expect(hot.hazards[0]?.finding).toMatchObject({ rule: 'heat', outcome: 'no-go' })
    const cold = look(day(() => ({ airC: -15, rhPct: 60, windKmh: 10, gustKmh: 15 })))
    expect(cold.hazards.map(({ finding }) => finding.rule)).toContain('cold')
  })

  test('it begins now and ends with the forecast', () => {
    const late = look(
      day(() => ({}), '2026-05-04T15:00:00Z', '2026-05-04T07:00:00Z'),
      iso('2026-05-04T08:07:00Z')
    )
    expect([late.from, late.to]).toEqual([iso('2026-05-04T08:00:00Z'), iso('2026-05-04T15:00:00Z')])
    const over = look(day(() => ({}), '2026-05-04T02:00:00Z'))
    expect([over.from, over.known, over.activities.spray.outcome]).toEqual([null, false, 'unknown'])
  })

  test('a reading that is in force beats the forecast while it holds', () => {
    const memory = emptyMemory()
    const today = { ...memory.today, latest: { windKmh: { value: 30, at: now } } }
    const { spray } = look(day(), now, { ...memory, today } as typeof memory).activities
    // 60 min old is still in force at 06:30. Read 28 km/h above the forecast, the wind is in doubt for half a day.
    expect(spray.bands.find(({ to }) => to === iso('2026-05-04T04:45:00Z'))?.outcome).toBe('no-go')
    expect(times(spray.windows)).toEqual(['06:45-13:15 unknown', '13:15-20:00 caution'])
    expect(spray.windows[0]?.opens).toBe('wind-mean')
  })

  test('a day on which the clocks change has its true length', () => {
    const memory = emptyMemory({ zone: 'America/New_York', lat: 40, lon: -74 })
    const at = iso('2026-11-01T08:00:00Z')
    const whole = outlook(memory, null, sheet(), '2026-11-01', at)
    expect([whole.from, whole.to]).toEqual([iso('2026-11-01T10:00:00Z'), iso('2026-11-02T02:00:00Z')])
  })

  test('ranges of the day', () => {
    const { airC, gustKmh, rainChancePct } = look(day((hour) => ({ airC: hour < 12 ? 10 : 24, gustKmh: hour === 15 ? 33 : 12 })))
    expect(airC).toEqual({ min: 10, max: 24 })
    expect(gustKmh?.max).toBe(33)
    expect(rainChancePct).toEqual({ min: 0, max: 0 })
  })
})

describe('the roof of a day', () => {
  const now = iso('2026-06-10T03:30:00Z')
  const memory = emptyMemory()
  const dry = sampleForecast(now, memory.settings.zone)
  const long = mergeHours(dry.hours, sampleForecast(now + 86_400, memory.settings.zone).hours)
  const wettest = long.map((hour) => ({ ...hour, rainMm: 2, rainChancePct: 90, rhPct: 99, sunWm2: 0 }))

  test.each([
    ['that dries', { ...dry, hours: long }, '2026-06-10'],
    ['of tomorrow', { ...dry, hours: long }, '2026-06-11'],
    ['that stays wet to the end of what is foretold', { ...dry, hours: wettest }, '2026-06-10']
  ])('%s makes the same outlook as the roof of all hours', (_, forecast, date) => {
    const all = roofOf(memory, forecast, sheet(), now)
    const own = roofOfDay(memory, forecast, sheet(), date, now)
    expect(outlook(memory, forecast, sheet(), date, now, own)).toEqual(outlook(memory, forecast, sheet(), date, now, all))
    expect(own?.endAt === all?.endAt).toBe(forecast.hours === wettest || date !== '2026-06-10')
  })
})
