import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Extremes, farthestFrom, markExtremes } from '../../../src/core/log/states/extremes.js'

describe('how far a reading went since', () => {
  it('is what going through all of them gives, with far fewer kept', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: -20, max: 40 })), { maxLength: 40 }),
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 0, max: 40 }),
        (steps, at, seq) => {
          let extremes: Extremes | undefined
          let now = 0
          const all = steps.map(([later, value], index) => {
            now += later
            return { at: now, seq: index + 1, value }
          })
          for (const one of all) extremes = markExtremes(extremes, one)
          const since = all.filter((one) => one.at > at || (one.at === at && one.seq > seq))

          const distances = since.map(({ value }) => Math.abs(value - 10))
          expect(farthestFrom(10, extremes, { at, seq })).toBe(distances.length === 0 ? null : Math.max(...distances))
        }
      ),
      { numRuns: 500, seed: 3 }
    )
  })

  it('keeps two of a steady rise and fall', () => {
    let extremes: Extremes | undefined
    for (let n = 1; n <= 500; n += 1) extremes = markExtremes(extremes, { at: n, seq: n, value: n })
    expect(extremes?.highs).toHaveLength(1)
    extremes = markExtremes(extremes, { at: 501, seq: 501, value: 0 })
    expect(extremes.lows).toHaveLength(1)
    expect(extremes.highs).toHaveLength(2)
  })

  it('is not known without a reading', () => {
    expect(farthestFrom(10, undefined, { at: 0, seq: 0 })).toBeNull()
  })
})
