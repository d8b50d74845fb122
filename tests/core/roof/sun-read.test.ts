import { describe, expect, test } from 'vitest'
import { roofAt } from '../../../src/core/roof/series.js'
import { simulate } from '../../../src/core/roof/simulate.js'
import { type Surfaces, surfacesOf } from '../../../src/core/roof/surface.js'
import { emptyHour, type Hour } from '../../../src/core/weather/hour.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'

/** Noon of a May day at 50° N, 8° E. */
const noon = iso('2026-05-04T11:00:00Z')
const surfaces = surfacesOf(sheet(), 'board') as Surfaces
const hours = Array.from({ length: 60 }, (_, index): Hour => {
  const hour = index - 30
  return { ...emptyHour(noon + hour * 3600), airC: 15, rhPct: 50, windKmh: 8, cloudPct: 30, rainMm: 0, rainChancePct: 0 }
})

/** Temperature of the board so many hours after noon, with the sun read at noon or not. */
function boardC(afterH: number, sunWm2: number | null): number {
  const series = simulate(hours, {
    lat: 50,
    lon: 8,
    heightM: 8,
    knownAt: noon,
    issuedAt: noon,
    spread: { airK: 1.5, rhPct: 7, windKmh: 5 },
    read: { airC: null, rhPct: null, windKmh: null, ...(sunWm2 === null ? {} : { sunWm2: { value: sunWm2, at: noon } }) },
    surfaces,
    told: { substrate: [], sheet: [] }
  })
  if (series === null) throw new Error('no series')
  return roofAt(series, noon + afterH * 3600).substrate.surfaceC.value as number
}

describe('sun read on the roof', () => {
  test('weak sun makes the hours to come cooler, and less and less so', () => {
    const cooler = (afterH: number) => boardC(afterH, null) - boardC(afterH, 150)
    expect(cooler(0.5)).toBeGreaterThan(8)
    expect(cooler(2)).toBeGreaterThan(3)
    expect(cooler(2)).toBeLessThan(cooler(0.5))
    expect(cooler(5)).toBeLessThan(cooler(2))
    // None is left at night.
    expect(Math.abs(cooler(14))).toBeLessThan(0.3)
  })

  test('stronger sun makes them warmer, within what a sky can give; no reading moves what was before it', () => {
    expect(boardC(-2, 150)).toBe(boardC(-2, null))
    expect(boardC(1, 1200)).toBeGreaterThan(boardC(1, null))
    expect(boardC(1, 1200) - boardC(1, null)).toBeLessThan(20)
  })
})
