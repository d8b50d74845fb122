import { describe, expect, test } from 'vitest'
import type { Facts } from '../../../src/core/facts.js'
import { sunEvents } from '../../../src/core/gather/daylight.js'
import { gather } from '../../../src/core/gather/gather.js'
import { roofOf } from '../../../src/core/gather/roof-of.js'
import { localDate } from '../../../src/core/instant.js'
import { directFraction } from '../../../src/core/physics/radiation.js'
import { wbgt } from '../../../src/core/physics/wbgt.js'
import { emptyHour, type Hour } from '../../../src/core/weather/hour.js'
import { sheet } from '../../support/facts.js'
import { forecastOf } from '../../support/hours.js'
import { iso } from '../../support/instant.js'
import { type Logged, remembered } from '../../support/remembered.js'

/** Before dawn in Berlin. */
const night = iso('2026-05-05T02:00:00Z')
const noon = iso('2026-05-05T10:00:00Z')

/** A mild day, a clear, calm, moist night, a mild day. */
function dewyNight(issuedAt: number, change: Partial<Hour> = {}) {
  const hours: Hour[] = []
  for (let at = night - 30 * 3600; at <= night + 30 * 3600; at += 3600) {
    const hour = ((at - night) / 3600 + 48) % 24
    const dark = hour >= 18 || hour <= 4
    const air = dark ? { airC: 9, rhPct: 97, windKmh: 2 } : { airC: 17, rhPct: 55, windKmh: 8 }
    hours.push({ ...emptyHour(at), ...air, cloudPct: 0, rainMm: 0, rainChancePct: 0, gustKmh: 12, thunder: false, ...change })
  }
  return forecastOf(new Date(issuedAt * 1000).toISOString(), hours)
}

function factsAt(log: readonly Logged[], now: number, forecast: ReturnType<typeof dewyNight> | null = dewyNight(now)): Facts {
  const memory = remembered(log, now)
  const sun = sunEvents(memory.settings, localDate(now, memory.settings.zone))
  return gather(memory, forecast, sun, sheet(), now, now, roofOf(memory, forecast, sheet(), now))
}

describe('what the model tells of a roof', () => {
  test("without a reading both surfaces are the model's, with a spread, and so are the dew margins", () => {
    const facts = factsAt([], noon)
    for (const fact of [facts.substrateC, facts.sheetC, facts.substrateDewMarginK, facts.sheetDewMarginK]) {
      expect(fact).toMatchObject({ origin: 'model', stale: false })
      expect(fact.spread).toBeGreaterThan(0.5)
    }
    expect(facts.substrateC.value).toBeGreaterThan(facts.airC.value as number)
  })

  test('a reading in force beats it, decides by its value, and shapes what the model says once it has lapsed', () => {
    const plain = factsAt([], noon).substrateC.value as number
    const read: Logged = [noon, 'reading', 'day', { substrateC: plain - 12 }]
    expect(factsAt([read], noon + 1800).substrateC).toMatchObject({ value: plain - 12, origin: 'reading', spread: 0 })
    const later = factsAt([read], noon + 3600).substrateC
    expect(later.origin).toBe('model')
    expect((factsAt([], noon + 3600).substrateC.value as number) - (later.value as number)).toBeGreaterThan(5)
  })

  test('no forecast, one of yesterday, an unheard-of substrate: nothing is known', () => {
    expect(factsAt([], noon, null).substrateC.value).toBeNull()
    expect(factsAt([], noon, dewyNight(noon - 13 * 3600)).substrateC.value).toBeNull()
    const memory = remembered([], noon)
    expect(roofOf({ ...memory, settings: { ...memory.settings, substrate: 'slate' } }, dewyNight(noon), sheet(), noon)).toBeNull()
  })

  test('dew beyond doubt wets what nobody spoke of, but never says dry in place of a person', () => {
    const facts = factsAt([], night)
    expect(facts.surfaceWet).toMatchObject({ value: true, origin: 'model' })
    expect(facts.substrateDry.value).toBeNull()
    expect(factsAt([], noon).substrateDry.value).toBeNull()
    expect(factsAt([], noon).surfaceWet.value).toBe(false)
  })

  test('stated dry stays dry until the model has it wet beyond doubt since', () => {
    const evening = iso('2026-05-04T19:00:00Z')
    const dry: Logged = [evening, 'statement', 'day', { substrateDry: true, fleeceDry: true, lapDry: true }]
    expect(factsAt([dry], evening + 60).substrateDry).toMatchObject({ value: 'dry', origin: 'statement' })
    const before = night - 3600
    const facts = factsAt([[before, 'statement', 'day', { substrateDry: true, lapDry: true }]], night)
    expect(facts.substrateDry).toMatchObject({ value: 'dew', origin: 'model' })
    expect(facts.seamDry).toMatchObject({ value: 'dew', origin: 'model' })
  })

  test('foretold rain since takes a statement of dry back as rain', () => {
    const at = noon - 1800
    const rain = dewyNight(noon, { rainMm: 2, rainChancePct: 100 })
    expect(factsAt([[at, 'statement', 'day', { substrateDry: true }]], noon, rain).substrateDry).toMatchObject({ value: 'rain', origin: 'model' })
  })

  test('readings of air, humidity or dew point, and wind move the surface', () => {
    const plain = factsAt([], noon + 7200).substrateC.value as number
    const moved = (data: Logged[3]) => factsAt([[noon, 'reading', 'day', data]], noon + 7200).substrateC.value as number
    expect(moved({ airC: 25 })).toBeGreaterThan(plain + 3)
    expect(moved({ windKmh: 40 })).toBeLessThan(plain - 3)
    expect(moved({ rhPct: 90 })).toBeGreaterThan(plain)
    expect(moved({ airC: 17, dewPointC: 16 })).toBeGreaterThan(plain)
  })
})

describe('WBGT', () => {
  const sunny: Logged = [noon, 'reading', 'day', { airC: 30, rhPct: 40, windKmh: 10, sunWm2: 800 }]

  test('of readings alone it is a reading, and what the formula gives', () => {
    const { wbgtC } = factsAt([sunny], noon)
    expect(wbgtC).toMatchObject({ origin: 'reading', spread: 0 })
    // Sun 56° over the horizon there and then (sun position is checked in its own test).
    const cosZenith = Math.sin((52.2 * Math.PI) / 180)
    const expected = wbgt({
      airC: 30,
      rhPct: 40,
      windKmh: 10,
      sunWm2: 800,
      pressureHpa: 1013.25,
      directFraction: directFraction(800, cosZenith),
      cosZenith
    }).wbgtC
    expect(Math.abs((wbgtC.value as number) - expected)).toBeLessThan(0.3)
  })

  test('of a forecast it is an estimate; without cloud or sun, or in frost, it is not known', () => {
    const { wbgtC } = factsAt([], noon)
    expect(wbgtC.origin).toBe('forecast')
    expect(wbgtC.spread).toBeGreaterThan(1)
    expect(factsAt([], noon, dewyNight(noon, { cloudPct: null })).wbgtC.value).toBeNull()
    expect(factsAt([], noon, dewyNight(noon, { airC: -3 })).wbgtC.value).toBeNull()
    expect(factsAt([], noon, null).wbgtC.value).toBeNull()
  })

  test('its spread is what the formula itself moves by, within a factor of two, in warm weather', () => {
    for (const [airC, rhPct, windKmh, sunWm2] of [
      [25, 50, 10, 700],
      [32, 45, 15, 800],
      [20, 60, 12, 400]
    ] as const) {
      const cosZenith = 0.75
      const of = (air: number, rh: number, wind: number, sun: number) =>
        wbgt({ airC: air, rhPct: rh, windKmh: wind, sunWm2: sun, pressureHpa: 1013.25, directFraction: directFraction(sun, cosZenith), cosZenith })
          .wbgtC
      const base = of(airC, rhPct, windKmh, sunWm2)
      const moved = [
        of(airC + 1.5, rhPct, windKmh, sunWm2),
        of(airC, rhPct + 7, windKmh, sunWm2),
        of(airC, rhPct, windKmh + 5, sunWm2),
        of(airC, rhPct, windKmh, sunWm2 * 1.25)
      ]
      const spread = Math.hypot(...moved.map((value) => value - base))
      const ours = factsAt([], noon, dewyNight(noon, { airC, rhPct, windKmh, sunWm2 })).wbgtC.spread
      expect(ours / spread).toBeGreaterThan(0.5)
      expect(ours / spread).toBeLessThan(2)
    }
  })
})
