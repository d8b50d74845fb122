import { describe, expect, it } from 'vitest'
import { commonOpenTime, openTimeS } from '../../../src/core/kits/open-time.js'

// 90 s cold, 30 s hot: common practice, no source; their temperatures are invented.
describe('open time', () => {
  it('passes through its points', () => {
    expect(openTimeS(10, commonOpenTime)).toBeCloseTo(90, 9)
    expect(openTimeS(35, commonOpenTime)).toBeCloseTo(30, 9)
  })

  it('is Arrhenius: ln t is a straight line in 1/T (worked by hand)', () => {
    const slope = Math.log(90 / 30) / (1 / 283.15 - 1 / 308.15)
    for (const c of [-20, 0, 20, 50, 80]) expect(openTimeS(c, commonOpenTime)).toBeCloseTo(90 * Math.exp(slope * (1 / (c + 273.15) - 1 / 283.15)), 6)
    // In the handbook form k = A·exp(−E/RT) that is an activation energy of 32 kJ/mol: the order of a urethane reaction (from memory).
    expect((slope * 8.314) / 1000).toBeGreaterThan(25)
    expect((slope * 8.314) / 1000).toBeLessThan(60)
  })

  it('falls as the substrate warms', () => {
    for (let c = -20; c < 80; c += 1) expect(openTimeS(c + 1, commonOpenTime) ?? 0).toBeLessThan(openTimeS(c, commonOpenTime) ?? 0)
  })

  it('with more points goes between neighbours, in any order, and on beyond the ends', () => {
    const points = Object.freeze([
      { c: 35, s: 30 },
      { c: 0, s: 200 },
      { c: 10, s: 90 }
    ])
    expect(openTimeS(0, points)).toBeCloseTo(200, 9)
    expect(openTimeS(22, points)).toBeCloseTo(openTimeS(22, commonOpenTime) ?? 0, 9)
    expect(openTimeS(50, points)).toBeCloseTo(openTimeS(50, commonOpenTime) ?? 0, 9)
    expect(openTimeS(-10, points)).toBeGreaterThan(200)
  })

  it.each([-20.1, 80.1, Number.NaN])('is not known at %d °C', (c) => {
    expect(openTimeS(c, commonOpenTime)).toBeNull()
  })

  it.each([
    [[]],
    [[{ c: 10, s: 90 }]],
    [
      [
        { c: 10, s: 90 },
        { c: 10, s: 30 }
      ]
    ],
    [
      [
        { c: 10, s: 0 },
        { c: 35, s: 30 }
      ]
    ],
    [
      [
        { c: Number.NaN, s: 90 },
        { c: 35, s: 30 }
      ]
    ]
  ])('is not known from %j', (points) => {
    expect(openTimeS(20, points)).toBeNull()
  })
})
