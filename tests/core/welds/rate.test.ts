import jstat from 'jstat'
import { describe, expect, it } from 'vitest'
import { voidRate } from '../../../src/core/welds/rate.js'
import { readTruth } from '../../truth/rows.js'

const { chi90 } = readTruth('statistics.json') as { chi90: { points: Record<string, number>; tolerance: number; source: string } }

describe('voids per 100 m', () => {
  it('has the bound of jstat 1.9 (chi-square quantile), and at that mean so few come with 10 %', () => {
    for (let voids = 0; voids <= 120; voids += 1) {
      const upper = voidRate(voids, 100).per100mUpper90 ?? Number.NaN
      expect(Math.abs(upper - jstat.chisquare.inv(0.9, 2 * (voids + 1)) / 2), String(voids)).toBeLessThan(1e-5)
      expect(jstat.poisson.cdf(voids, upper)).toBeCloseTo(0.1, 5)
    }
  })

  it.each(Object.entries(chi90.points))('the bound is half the 90 %% point of chi-square with %s degrees of freedom', (freedom, point) => {
    const { per100mUpper90 } = voidRate(Number(freedom) / 2 - 1, 100)

    expect(Math.abs(2 * (per100mUpper90 ?? 0) - point), chi90.source).toBeLessThanOrEqual(chi90.tolerance)
  })

  it('with none found is −ln 0.1 (exact)', () => {
    expect(voidRate(0, 100)).toEqual({ per100m: 0, per100mUpper90: expect.closeTo(Math.log(10), 10) })
  })

  it('goes with the metres', () => {
    expect(voidRate(3, 250).per100m).toBeCloseTo(1.2, 12)
    expect(voidRate(3, 250).per100mUpper90).toBeCloseTo((voidRate(3, 100).per100mUpper90 ?? 0) / 2.5, 10)
  })

  it('rises with the voids and stays above the rate, up to the largest count', () => {
    let last = 0
    for (const voids of [0, 1, 2, 10, 100, 1000, 10_000, 100_000]) {
      const { per100m, per100mUpper90 } = voidRate(voids, 100)
      expect(per100mUpper90 ?? 0).toBeGreaterThan(Math.max(last, per100m ?? 0))
      last = per100mUpper90 ?? 0
    }
    // Normal approximation for large counts: x + 1.2816 √x + (1.2816² + 2)/3 (textbook Cornish–Fisher, from memory).
    expect(last).toBeCloseTo(100_000 + 1.281552 * Math.sqrt(100_000) + (1.281552 ** 2 + 2) / 3, 1)
  })

  it.each([
    [1, 0],
    [1, -5],
    [1, Number.NaN],
    [Number.NaN, 100],
    [-1, 100],
    [1.5, 100],
    [100_001, 100]
  ])('is not known for %d voids on %d m', (voids, metres) => {
    expect(voidRate(voids, metres)).toEqual({ per100m: null, per100mUpper90: null })
  })
})
