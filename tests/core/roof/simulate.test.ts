import { describe, expect, test } from 'vitest'
import { sampleForecast } from '../../../src/adapters/weather/sample/index.js'
import { correct } from '../../../src/core/roof/correct.js'
import { type RoofSeries, roofAt, wetSince, wetSpell } from '../../../src/core/roof/series.js'
import { type RoofState, simulate } from '../../../src/core/roof/simulate.js'
import { type Surfaces, surfacesOf } from '../../../src/core/roof/surface.js'
import { emptyHour, type Hour } from '../../../src/core/weather/hour.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'

const now = iso('2026-05-05T03:00:00Z')
const calm: Partial<Hour> = { airC: 12, rhPct: 75, windKmh: 6, cloudPct: 20, rainMm: 0, rainChancePct: 0 }

function hours(of: (hour: number) => Partial<Hour> = () => ({}), from = -30, to = 24, every = 1): readonly Hour[] {
  const out: Hour[] = []
  for (let hour = from; hour <= to; hour += every) out.push({ ...emptyHour(now + hour * 3600), ...calm, ...of(hour) })
  return out
}

function state(change: Partial<RoofState> = {}): RoofState {
  return {
    lat: 50,
    lon: 8,
    heightM: 8,
    knownAt: now,
    issuedAt: now,
    spread: { airK: 1.5, rhPct: 7, windKmh: 5 },
    read: { airC: null, rhPct: null, windKmh: null },
    surfaces: surfacesOf(sheet(), 'board') as Surfaces,
    told: { substrate: [], sheet: [] },
    ...change
  }
}

function sim(of: readonly Hour[] = hours(), change: Partial<RoofState> = {}): RoofSeries {
  const series = simulate(of, state(change))
  if (series === null) throw new Error('no series')
  return series
}

describe('the roof simulated', () => {
  test("36 h back to the last hour, each fact the model's with a spread", () => {
    const series = sim(sampleForecast(now, 'Europe/Berlin').hours)
    expect([series.startAt, series.endAt]).toEqual([now - 36 * 3600, now + 60 * 3600])
    const { substrate, sheet: laid } = roofAt(series, now + 1234)
    for (const { surfaceC } of [substrate, laid]) {
      expect(surfaceC).toMatchObject({ origin: 'model', at: now + 1234, stale: false })
      expect(surfaceC.spread).toBeGreaterThanOrEqual(0.7)
    }
    for (const at of [series.startAt - 1, series.endAt + 1, Number.NaN]) expect(roofAt(series, at).substrate.surfaceC.value).toBeNull()
    expect(roofAt(null, now).sheet.wet.value).toBeNull()
  })

  test('no farther ahead than is asked for, and the same as far as it goes', () => {
    const [near, far] = [sim(hours(), { aheadS: 6 * 3600 }), sim()]
    expect([near.endAt, far.endAt]).toEqual([now + 7 * 3600, now + 24 * 3600])
    expect(roofAt(near, now + 5 * 3600)).toEqual(roofAt(far, now + 5 * 3600))
  })

  test('the same hours give the same numbers', () => {
    expect(sim()).toEqual(sim())
  })

  test('spread: it grows with every error of the weather, and is not of one of them alone', () => {
    const spreadAt = (spread: RoofState['spread'], change: Partial<RoofState> = {}) =>
      roofAt(sim(hours(), { spread, ...change }), now).substrate.surfaceC.spread
    const none = spreadAt({ airK: 0, rhPct: 0, windKmh: 0 })
    for (const one of [
      { airK: 3, rhPct: 0, windKmh: 0 },
      { airK: 0, rhPct: 20, windKmh: 0 },
      { airK: 0, rhPct: 0, windKmh: 9 }
    ])
      expect(spreadAt(one)).toBeGreaterThan(none + 0.05)
    // Cloud and sun have a spread of their own.
    expect(none).toBeGreaterThan(0.71)
    expect(spreadAt({ airK: 3, rhPct: 0, windKmh: 0 }, { issuedAt: now - 4 * 3600 })).toBeGreaterThan(spreadAt({ airK: 3, rhPct: 0, windKmh: 0 }) + 1)
  })

  test('without last night it starts wet and wide: neither wet nor dry is said until the sun has dried it', () => {
    const series = sim(hours(undefined, 0))
    expect(roofAt(series, now + 600).substrate.wet.value).toBeNull()
    expect(roofAt(series, now + 600).substrate.surfaceC.spread).toBeGreaterThan(1.5)
    expect(roofAt(series, now + 9 * 3600).substrate.wet.value).toBe(false)
    expect(roofAt(sim(), now).substrate.surfaceC.spread).toBeLessThan(roofAt(series, now + 600).substrate.surfaceC.spread + 1)
  })

  test('a dewy night: wet beyond doubt, when from and until when', () => {
    const dewy = sim(hours((hour) => ({ airC: hour < -9 || hour > 3 ? 18 : 9, rhPct: hour < -9 || hour > 3 ? 50 : 97, windKmh: 2, cloudPct: 0 })))
    expect(roofAt(dewy, now).substrate.wet).toMatchObject({ value: true, origin: 'model' })
    const { dewFromAt, dryAt } = wetSpell(dewy, 'substrate', now)
    expect(dewFromAt).toBeGreaterThan(now - 10 * 3600)
    expect(dewFromAt).toBeLessThan(now)
    expect(dryAt).toBeGreaterThan(now + 2 * 3600)
    expect(dryAt).toBeLessThan(now + 7 * 3600)
    // From the evening before, the same spell is the next one.
    expect(wetSpell(dewy, 'substrate', now - 14 * 3600)).toEqual({ dewFromAt, dryAt })
    expect(wetSince(dewy, 'substrate', now - 14 * 3600, now)).toMatchObject({ by: 'dew' })
    expect(wetSince(dewy, 'substrate', now - 14 * 3600, now - 12 * 3600)).toBeNull()
    expect(wetSpell(sim(hours(() => ({ rhPct: 30 }))), 'sheet', now)).toEqual({ dewFromAt: null, dryAt: null })
  })

  test('rain: wet, by rain', () => {
    const wet = sim(hours((hour) => (hour === -2 ? { rainMm: 3, rainChancePct: 95 } : {})))
    expect(wetSince(wet, 'sheet', now - 4 * 3600, now)).toMatchObject({ by: 'rain' })
  })

  test('a reading: passed through, sure there, less sure again; the other surface is left alone', () => {
    const at = now + 3600
    const plain = sim()
    const { surfaceC: before } = roofAt(plain, at).substrate
    const told = { substrate: [{ at, surfaceC: (before.value as number) + 2 }], sheet: [] }
    const series = sim(hours(), { told })
    const here = roofAt(series, at).substrate.surfaceC
    expect(here.value).toBeCloseTo((before.value as number) + 2, 6)
    expect(here.spread).toBeCloseTo(0.5, 1)
    expect(roofAt(series, at + 12 * 3600).substrate.surfaceC.spread).toBeGreaterThan(1)
    expect(roofAt(series, at).sheet).toEqual(roofAt(plain, at).sheet)
  })

  test('stated dry it is dry, stated wet it is wet', () => {
    const bare = hours(() => ({ cloudPct: 100, rhPct: 80 }), 0)
    expect(roofAt(sim(bare, { told: { substrate: [{ at: now + 600, wet: 'dry' }], sheet: [] } }), now + 900).substrate.wet.value).toBe(false)
    expect(roofAt(sim(bare, { told: { substrate: [{ at: now + 600, wet: 'rain' }], sheet: [] } }), now + 900).substrate.wet.value).toBe(true)
  })

  test('missing values: held for 3 h with a wider spread, then the series ends', () => {
    const whole = sim()
    const gone = sim(hours((hour) => (hour > 4 ? { airC: null } : {})))
    expect(gone.endAt).toBe(now + 7 * 3600)
    expect(roofAt(gone, now + 8 * 3600).substrate.surfaceC.value).toBeNull()
    const spread = (series: RoofSeries) => roofAt(series, now + 7 * 3600).substrate.surfaceC.spread
    expect(spread(gone)).toBeGreaterThan(spread(whole))
    // A gap between two known values is bridged up to 6 h.
    expect(sim(hours((hour) => (hour > 4 && hour < 10 ? { airC: null, windKmh: null } : {}))).endAt).toBe(whole.endAt)
    expect(sim(hours((hour) => (hour > 4 && hour < 12 ? { windKmh: null } : {}))).endAt).toBe(now + 7 * 3600)
  })

  test('hours of 6 h, no cloud, no rain, nothing at all', () => {
    expect(sim(hours(undefined, -30, 24, 6)).endAt).toBe(now + 24 * 3600)
    const noon = now + 9 * 3600
    const cloudless = sim(hours(() => ({ cloudPct: null })))
    expect(roofAt(cloudless, noon).substrate.surfaceC.spread).toBeGreaterThan(roofAt(sim(), noon).substrate.surfaceC.spread)
    // Whether it rains nobody says: it may be wet.
    expect(roofAt(sim(hours(() => ({ rainMm: null, rainChancePct: null }))), noon).substrate.wet.value).not.toBe(true)
    expect(roofAt(sim(hours(() => ({ rainMm: null, rainChancePct: null, cloudPct: 100, rhPct: 90 }))), noon).substrate.wet.value).toBeNull()
    expect(simulate([], state())).toBeNull()
    expect(
      simulate(
        hours(() => ({ windKmh: null })),
        state()
      )
    ).toBeNull()
    expect(simulate(hours().slice(0, 1), state())).toBeNull()
  })

  test('a stretch from before a gap is not gone on with: what holds around now counts', () => {
    const series = sim(hours((hour) => (hour > -24 && hour < -12 ? { airC: null } : {})))
    expect(series.startAt).toBe(now - 12 * 3600)
  })

  test('NaN and the impossible are refused at the door', () => {
    for (const bad of [
      { airC: Number.NaN },
      { rhPct: Number.NaN },
      { windKmh: -1 },
      { cloudPct: 101 },
      { sunWm2: Number.NaN },
      { rainMm: -1 },
      { airC: 99 }
    ]) {
      expect(
        () =>
          simulate(
            hours((hour) => (hour === 3 ? bad : {})),
            state()
          ),
        JSON.stringify(bad)
      ).toThrow(RangeError)
    }
    expect(() => simulate(hours(), state({ heightM: Number.NaN }))).toThrow(RangeError)
  })

  test('polar night, polar day and a day on which clocks change: finite all through', () => {
    for (const [lat, at] of [
      [78, '2026-12-20T12:00:00Z'],
      [78, '2026-06-20T00:00:00Z'],
      [-90, '2026-12-20T12:00:00Z'],
      [50, '2026-03-29T01:00:00Z'],
      [50, '2026-10-25T01:00:00Z']
    ] as const) {
      const knownAt = iso(at)
      const moved = hours().map((hour) => ({ ...hour, at: hour.at - now + knownAt }))
      const { substrate } = sim(moved, { lat, knownAt, issuedAt: knownAt })
      expect([...substrate.surfaceC, ...substrate.spreadK, ...substrate.filmMm].every(Number.isFinite), `${lat} ${at}`).toBe(true)
      expect(substrate.surfaceC.length).toBe(54 * 12 + 1)
    }
  })

  test('a source that gives sun is believed, hour by hour', () => {
    const dark = roofAt(sim(hours(() => ({ sunWm2: 0 }))), now + 9 * 3600).substrate.surfaceC.value as number
    const bright = roofAt(sim(hours((hour) => ({ sunWm2: hour > 3 && hour < 16 ? 800 : 0 }))), now + 9 * 3600).substrate.surfaceC.value as number
    expect(dark).toBeLessThan(12)
    expect(bright).toBeGreaterThan(35)
  })
})

describe('local correction', () => {
  const spread = { airK: 1.5, rhPct: 7, windKmh: 5 }

  test('moves the hours by what was off, fading with 6 h, and takes from the spread', () => {
    const { hours: moved, left } = correct(hours(), { airC: { value: 15, at: now }, rhPct: null, windKmh: { value: 2, at: now } }, spread)
    const of = (hour: number) => moved.find(({ at }) => at === now + hour * 3600) as Hour
    expect(of(0).airC).toBeCloseTo(15, 9)
    // DESIGN §5.8: time constant 6 h.
    expect(of(6).airC).toBeCloseTo(12 + 3 / Math.E, 9)
    expect(of(0).windKmh).toBeCloseTo(2, 9)
    expect(of(0).rhPct).toBe(75)
    const index = moved.findIndex(({ at }) => at === now)
    expect(left.airC[index]).toBeCloseTo(0.5 / 1.5, 9)
    expect(left.airC[index + 24]).toBeGreaterThan(0.99)
    expect(left.rhPct.every((share) => share === 1)).toBe(true)
  })

  test('without a reading, or with one the forecast says nothing of, nothing moves', () => {
    const none = { airC: null, rhPct: null, windKmh: null }
    expect(correct(hours(), none, spread).hours).toEqual(hours())
    expect(correct(hours(), { ...none, airC: { value: 30, at: now - 90 * 3600 } }, spread).hours).toEqual(hours())
  })

  test('humidity stays between nothing and saturation, wind at nothing', () => {
    const { hours: moved } = correct(hours(), { airC: null, rhPct: { value: 100, at: now }, windKmh: { value: 0, at: now } }, spread)
    for (const { rhPct, windKmh, airC, dewPointC } of moved) {
      expect(rhPct).toBeLessThanOrEqual(100)
      expect(windKmh).toBeGreaterThanOrEqual(0)
      expect(dewPointC).toBeLessThanOrEqual(airC as number)
    }
  })
})
