import { describe, expect, it } from 'vitest'
import { fastenersOnLeg, largestFirstMm } from '../../../src/core/sheets/fasteners.js'

// Common practice, no source.
describe('fasteners on a leg', () => {
  it.each([
    [3, 300, 150, 10],
    [3.3, 300, 150, 11],
    [3.31, 300, 150, 12],
    [10, 250, 125, 40],
    [0.3, 300, 150, 1],
    [0.1, 300, 150, 1],
    [3, 300, 0, 11]
  ])('%d m at %d mm, first at %d mm: %d', (legM, spacingMm, firstMm, count) => {
    expect(fastenersOnLeg(legM, spacingMm, firstMm)).toBe(count)
  })

  it('never leaves more than the spacing between two, nor one too many', () => {
    for (let legMm = 400; legMm <= 5000; legMm += 37) {
      for (const spacingMm of [150, 200, 300, 457]) {
        const firstMm = largestFirstMm(spacingMm)
        const gaps = fastenersOnLeg(legMm / 1000, spacingMm, firstMm) - 1
        expect((legMm - 2 * firstMm) / gaps).toBeLessThanOrEqual(spacingMm + 1e-6)
        if (gaps > 1) expect((legMm - 2 * firstMm) / (gaps - 1)).toBeGreaterThan(spacingMm)
      }
    }
  })

  it('puts the first at half the spacing, 150 mm at most', () => {
    expect(largestFirstMm(200)).toBe(100)
    expect(largestFirstMm(600)).toBe(150)
  })

  it.each([
    [0, 300, 150],
    [3, 0, 0],
    [3, 300, 151],
    [3, 200, 101],
    [3, 300, -1],
    [Number.NaN, 300, 150],
    [3, 300, Number.NaN]
  ])('refuses %d m, %d mm, %d mm', (legM, spacingMm, firstMm) => {
    expect(() => fastenersOnLeg(legM, spacingMm, firstMm)).toThrow(RangeError)
  })
})
