import { describe, expect, it } from 'vitest'
import { awgToMm2 } from '../../../src/core/units.js'
import { conductorOhmM, generatorW, sectionFor, voltageDrop } from '../../../src/core/welds/voltage.js'
import { readTruth } from '../../truth/rows.js'

const { class5 } = readTruth('conductors.json') as { class5: { ohmPerKm: Record<string, number>; source: string } }
const lead = { volts: 230, watts: 3680, leadM: 50, areaMm2: 2.5 } as const

describe('conductor', () => {
  it.each(Object.entries(class5.ohmPerKm))('of %s mm² has %d Ω/km', (area, ohm) => {
    expect(conductorOhmM(Number(area)) * 1000, class5.source).toBeCloseTo(ohm, 9)
  })

  it('of a gauge is near the stranded copper of NEC chapter 9, table 8 (from memory: 12 AWG 1.98 Ω/kft at 75 °C)', () => {
    const at75 = conductorOhmM(awgToMm2(12)) * (1 + 0.00393 * 55)
    expect(at75 * 304.8).toBeGreaterThan(1.98 * 0.95)
    expect(at75 * 304.8).toBeLessThan(1.98 * 1.05)
  })
})

describe('voltage at the tool', () => {
  it('is a voltage divider (Ohm, worked by hand)', () => {
    // R = 230²/3680 = 14.375 Ω; lead 2·50·0.00798 = 0.798 Ω; share 14.375/15.173.
    const { dropPct, heatPct, toolV } = voltageDrop(lead)

    expect(toolV).toBeCloseTo((230 * 14.375) / 15.173, 9)
    expect(dropPct).toBeCloseTo(100 * (1 - 14.375 / 15.173), 9)
    expect(heatPct).toBeCloseTo(100 * (14.375 / 15.173) ** 2, 9)
  })

  it('loses nothing without a lead, and more with a longer or thinner one', () => {
    expect(voltageDrop({ ...lead, leadM: 0 })).toEqual({ dropPct: 0, heatPct: 100, toolV: 230 })
    expect(voltageDrop({ ...lead, leadM: 100 }).dropPct).toBeGreaterThan(voltageDrop(lead).dropPct)
    expect(voltageDrop({ ...lead, areaMm2: 1.5 }).dropPct).toBeGreaterThan(voltageDrop(lead).dropPct)
  })

  it.each([{ volts: 0 }, { volts: Number.NaN }, { watts: 0 }, { leadM: -1 }, { leadM: Number.NaN }, { areaMm2: 0 }])('refuses %o', (change) => {
    expect(() => voltageDrop({ ...lead, ...change })).toThrow(RangeError)
  })
})

describe('generator', () => {
  // A quarter above the tool, up to the next 100 W: from memory.
  it.each([
    [4600, 5800],
    [1600, 2000],
    [2000, 2500],
    [3441, 4400]
  ])('for %d W runs %d W', (watts, rating) => {
    expect(generatorW(watts)).toBe(rating)
  })

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('is refused for %d W', (watts) => {
    expect(() => generatorW(watts)).toThrow(RangeError)
  })
})

describe('a lead that keeps the drop', () => {
  it('is the thinnest that does: the one before it does not', () => {
    const long = { volts: 230, watts: 4600, leadM: 50 }
    const found = sectionFor(long, 3)

    expect(found).toBe(6)
    expect(voltageDrop({ ...long, areaMm2: 6 }).dropPct).toBeLessThanOrEqual(3)
    expect(voltageDrop({ ...long, areaMm2: 4 }).dropPct).toBeGreaterThan(3)
  })

  it('is none where the thickest loses too much', () => {
    expect(sectionFor({ volts: 230, watts: 4600, leadM: 1000 }, 3)).toBeNull()
  })
})
