import { describe, expect, it } from 'vitest'
import { liftKmh } from '../../../src/core/physics/lift.js'

describe('lift', () => {
  it('is the wind whose suction is the weight (EN 1991-1-4: q = ½·1.25·v²; 1 kN/m² at 40 m/s)', () => {
    // 1000 N/m² of weight is 101.97162 kg/m² at 9.80665 m/s²: with cp 1 it lifts at √(2·1000/1.25) = 40 m/s, so a tenth of both at 4.
    expect(liftKmh(10.197162, 1)).toBeCloseTo(3.6 * Math.sqrt(160), 5)
    expect(liftKmh(2, -1)).toBe(liftKmh(2, 1))
    expect(liftKmh(4, 1) / liftKmh(1, 1)).toBeCloseTo(2, 12)
    expect(liftKmh(1, 4) / liftKmh(1, 1)).toBeCloseTo(0.5, 12)
  })

  it.each([
    [0, 1],
    [2, 0],
    [Number.NaN, 1],
    [2, Number.NaN],
    [101, 1],
    [2, 11]
  ])('refuses %d kg/m², cp %d', (kgM2, cp) => {
    expect(() => liftKmh(kgM2, cp)).toThrow(RangeError)
  })
})
