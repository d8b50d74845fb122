import { describe, expect, it } from 'vitest'
import { driftOf } from '../../../src/core/welds/drift.js'

describe('widths that drift', () => {
  // Five in a row: common practice, no source. By chance 1 in 5! = 120.
  it('fall, and say in how many coupons they are short', () => {
    // A straight line worked by hand: 1 mm a coupon, 40 now; 38 is not below 38, 37 is.
    expect(driftOf([44, 43, 42, 41, 40], 38)).toEqual({ kind: 'falling', shortIn: 3 })
    expect(driftOf([44, 43, 42, 41, 40], 38.5)).toEqual({ kind: 'falling', shortIn: 2 })
    expect(driftOf([40, 40, 44, 43, 42, 41, 38.2], 38)).toMatchObject({ kind: 'falling', shortIn: 1 })
    expect(driftOf([44, 43.99, 43.98, 43.97, 43.96], 38)).toEqual({ kind: 'falling', shortIn: null })
  })

  it.each([
    ['too few', [42, 41, 40, 39]],
    ['one that held', [44, 43, 43, 42, 41]],
    ['one that rose before the last', [44, 43, 42, 43, 40]],
    ['rising ones', [38, 39, 40, 41, 42, 43, 44, 45, 46]],
    ['none', []],
    ['no numbers', [44, 43, 42, 41, Number.NaN]],
    ['equal ones', [40, 40, 40, 40, 40, 40, 40, 40, 40]]
  ])('are not %s', (_what, widths) => {
    expect(driftOf(widths, 38)).toBeNull()
  })

  // Western Electric rules, NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2, from memory.
  it('are low when two of the last three lie below two sigma', () => {
    const calm = [42, 42.4, 42, 42.4, 42, 42.4, 42, 42.4, 42, 42.4, 42, 42.4]
    expect(driftOf([...calm, 41, 42.2, 41], 38)).toEqual({ kind: 'low', shortIn: null })
    expect(driftOf([...calm, 42.2, 42, 41], 38)).toBeNull()
  })

  it('are low when eight in a row lie below the mean', () => {
    expect(driftOf([44, 44, 44, 41, 41.2, 41, 41.1, 41, 41.3, 41, 41.2], 38)).toMatchObject({ kind: 'low' })
    expect(driftOf([41, 41.2, 41, 41.1, 41, 41.3, 41, 41.2, 44, 44, 44], 38)).toBeNull()
  })
})
