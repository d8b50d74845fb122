import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fromIso } from '../../../src/core/instant.js'
import { cosZenith, directFraction, horizontalWm2, solarConstantWm2, sunAtWm2 } from '../../../src/core/physics/radiation.js'
import { sunTimes } from '../../../src/core/physics/sun.js'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('sun on the horizontal', () => {
  // Kasten & Czeplak 1980, by hand from the printed equations (clear-sky coefficients from memory): overcast leaves a quarter.
  it.each([
    [90, 0, 880],
    [30, 0, 425],
    [30, 100, 106.25],
    [30, 50, 425 * (1 - 0.75 * 0.5 ** 3.4)],
    [1, 0, 0],
    [-20, 0, 0]
  ])('height %d°, cloud %d %%', (elevationDeg, cloudPct, wm2) => {
    expect(horizontalWm2(elevationDeg, cloudPct)).toBeCloseTo(wm2, 9)
  })

  // FAO-56 eq. 37 at sea level: a clear sky lets 75 % through. Hamburg has more haze.
  it('is 75…100 % of the clear sky of FAO-56 from 20° up', () => {
    for (let h = 20; h <= 90; h += 5) {
      const share = horizontalWm2(h, 0) / (0.75 * solarConstantWm2 * cosZenith(h))
      expect(share).toBeGreaterThan(0.75)
      expect(share).toBeLessThan(1)
    }
  })

  it('is never more under more cloud, nor more than outside the atmosphere', () => {
    fc.assert(
      fc.property(number(-90, 90), number(0, 100), number(0, 1), (h, cloudPct, share) => {
        const wm2 = horizontalWm2(h, cloudPct)
        expect(wm2).toBeGreaterThanOrEqual(0)
        expect(wm2).toBeLessThanOrEqual(Math.max(0, solarConstantWm2 * cosZenith(h)))
        expect(horizontalWm2(h, cloudPct * share)).toBeGreaterThanOrEqual(wm2)
      })
    )
  })

  it('follows the day of a place', () => {
    const noon = fromIso('2026-06-21T11:30:00Z')
    const { sunriseAt, sunsetAt } = sunTimes(50, 8, '2026-06-21', 'Europe/Berlin')
    if (noon === null || sunriseAt === null || sunsetAt === null) throw new Error('no day')
    // 63.4° of height at solar noon: 90 − 50 + 23.44.
    expect(sunAtWm2(50, 8, noon, 0)).toBeCloseTo(910 * Math.sin((63.44 * Math.PI) / 180) - 30, 0)
    expect(sunAtWm2(50, 8, sunriseAt - 60, 0)).toBe(0)
    expect(sunAtWm2(50, 8, sunsetAt + 60, 0)).toBe(0)
  })

  it.each([
    [Number.NaN, 0],
    [91, 0],
    [30, Number.NaN],
    [30, 101],
    [30, -1]
  ])('refuses %d°, %d %%', (h, cloudPct) => {
    expect(() => horizontalWm2(h, cloudPct)).toThrow(RangeError)
  })
})

describe('direct share', () => {
  // Liljegren et al. 2008 eq. 13, by hand: S* = 0.5 → exp(3 − 0.67 − 3.3).
  it('by the share of the sun that arrives', () => {
    expect(directFraction((0.5 * solarConstantWm2) / 2, 0.5)).toBeCloseTo(Math.exp(-0.97), 10)
    expect(directFraction(0, 0.5)).toBe(0)
    expect(directFraction(10, 0)).toBe(0)
    expect(directFraction(10, -0.3)).toBe(0)
  })

  it('leaves a beam that the sun can give, and more of it the clearer the sky', () => {
    fc.assert(
      fc.property(number(0, 1500), number(-1, 1), number(0, 1), (sunWm2, cos, share) => {
        const fraction = directFraction(sunWm2, cos)
        expect(fraction).toBeGreaterThanOrEqual(0)
        expect(fraction).toBeLessThanOrEqual(0.9)
        const beamWm2 = fraction === 0 ? 0 : (fraction * sunWm2) / cos
        expect(beamWm2).toBeLessThanOrEqual(1100)
        expect(directFraction(sunWm2 * share, cos) * share * sunWm2).toBeLessThanOrEqual(fraction * sunWm2 + 1e-9)
      })
    )
  })

  it.each([
    [Number.NaN, 0.5],
    [-1, 0.5],
    [1501, 0.5],
    [100, Number.NaN],
    [100, 1.1]
  ])('refuses %d W/m², cosine %d', (sunWm2, cos) => {
    expect(() => directFraction(sunWm2, cos)).toThrow(RangeError)
  })
})
