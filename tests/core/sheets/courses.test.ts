import { describe, expect, it } from 'vitest'
import { courseCount } from '../../../src/core/sheets/courses.js'

// Geometry, no source.
describe('courses', () => {
  it.each([
    [24, 2, 80, 13],
    [2, 2, 80, 1],
    [2.01, 2, 80, 2],
    [3.92, 2, 80, 2],
    [5.84, 2, 80, 3],
    [0.05, 2, 80, 1],
    [10, 1, 0, 10]
  ])('%d m of %d m sheets lapping %d mm: %d', (widthM, sheetM, lapMm, count) => {
    expect(courseCount(widthM, sheetM, lapMm)).toBe(count)
  })

  it('covers the roof with the fewest', () => {
    for (let widthM = 1; widthM < 60; widthM += 0.77) {
      const count = courseCount(widthM, 2, 80)
      expect(count * 2 - (count - 1) * 0.08).toBeGreaterThanOrEqual(widthM - 1e-6)
      if (count > 1) expect((count - 1) * 2 - (count - 2) * 0.08).toBeLessThan(widthM)
    }
  })

  it.each([
    [0, 2, 80],
    [24, 0, 80],
    [24, 2, 2000],
    [24, 2, -1],
    [Number.NaN, 2, 80],
    [24, 2, Number.NaN]
  ])('refuses %d, %d, %d', (widthM, sheetM, lapMm) => {
    expect(() => courseCount(widthM, sheetM, lapMm)).toThrow(RangeError)
  })
})
