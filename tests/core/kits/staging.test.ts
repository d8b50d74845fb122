import { describe, expect, it } from 'vitest'
import { stageKits } from '../../../src/core/kits/staging.js'

const day = { areaM2: 864, yieldM2PerKit: 90, warmMin: 1000, useIntervalMin: 180 } as const

describe('staging (common practice, no source)', () => {
  it('ceil(warm time ÷ use interval) + 1 at once, ceil(area ÷ yield) in the day', () => {
    expect(stageKits(day)).toEqual({ need: 10, warming: 7 })
    expect(stageKits({ ...day, warmMin: 900 })).toEqual({ need: 10, warming: 6 })
    expect(stageKits({ ...day, warmMin: 0 })).toEqual({ need: 10, warming: 1 })
  })

  it('never more at once than the day needs', () => {
    expect(stageKits({ ...day, areaM2: 100 })).toEqual({ need: 2, warming: 2 })
    expect(stageKits({ ...day, areaM2: 0 })).toEqual({ need: 0, warming: 0 })
  })

  it('not one more for the last digit of a division', () => {
    expect(stageKits({ ...day, areaM2: 0.3, yieldM2PerKit: 0.1 }).need).toBe(3)
  })

  it.each(Object.keys(day))('refuses a %s that is no number or below 0', (key) => {
    for (const value of [Number.NaN, -1, Number.POSITIVE_INFINITY]) expect(() => stageKits({ ...day, [key]: value })).toThrow(RangeError)
  })
})
