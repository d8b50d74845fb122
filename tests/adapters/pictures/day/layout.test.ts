import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { kept, plot, spaced, xOf } from '../../../../src/adapters/pictures/day/layout.js'

describe('labels', () => {
  const strip = { top: 100, bottom: 300 }

  test('stay where they are when there is room', () => {
    expect(spaced([150, 250, 200], 34, strip)).toEqual([150, 250, 200])
  })

  test('stand apart within the strip, in the order of their lines', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 400, noNaN: true }), { maxLength: 5 }), (wanted) => {
        const placed = spaced(wanted, 34, strip)
        const sorted = [...placed].sort((a, b) => a - b)
        for (const [index, each] of sorted.entries()) {
          expect(each).toBeGreaterThanOrEqual(strip.top - 1e-9)
          expect(each).toBeLessThanOrEqual(strip.bottom + 1e-9)
          if (index > 0) expect(each - (sorted[index - 1] ?? 0)).toBeGreaterThanOrEqual(34 - 1e-9)
        }
        for (const [a, first] of wanted.entries())
          for (const [b, second] of wanted.entries()) if (first < second) expect(placed[a]).toBeLessThan(placed[b] ?? 0)
      })
    )
  })

  test('keep off the line of now and inside the plot', () => {
    const x = xOf({ from: 0, to: 86400 })
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 86399 }), fc.double({ min: plot.left, max: plot.right, noNaN: true }), (now, wanted) => {
        const middle = kept(wanted, 120, { now }, x)
        expect(middle - 60).toBeGreaterThanOrEqual(plot.left - 1e-9)
        expect(middle + 60).toBeLessThanOrEqual(plot.right + 1e-9)
        expect(Math.abs(middle - x(now))).toBeGreaterThanOrEqual(60)
      })
    )
    expect(kept(400, 120, { now: null }, x)).toBe(400)
  })
})
