import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { leftIn } from '../../../src/core/kits/cylinder.js'
import { conductionTrail, kitCourses, lumpedTrail } from '../../../src/core/kits/kit-model.js'
import { steady } from '../../../src/core/kits/place.js'
import { advance, placesOf, sweepsOf, uniformProfile } from '../../../src/core/kits/profile.js'
import { valueAt } from '../../../src/core/kits/trail.js'
import { finerMeans } from '../../support/finer-cylinder.js'

/** As in the common-practice sheet. */
const kit = { radiusM: 0.15, heightM: 0.45, rhoKgM3: 1100, cJKgK: 1900, kWMK: 0.18, hWM2K: 8, exposedEnds: 2 } as const
const hourS = 3600
const cold = { at: 0, c: 5 }
const warm = steady({ toC: 25, hWM2K: 8 })

describe('a kit in constant surroundings, against the series (itself held against published rows)', () => {
  it.each([
    [2, 1],
    [2, 5],
    [1, 1],
    [1, 5],
    [0, 1],
    [0, 5]
  ])('%d ends exposed, mixing %d: within 0.1 K of 20 K', (exposedEnds, mixing) => {
    const body = { ...kit, exposedEnds }
    const exact = leftIn({ ...body, kWMK: kit.kWMK * mixing })
    const trail = conductionTrail(body, mixing, cold, 72 * hourS, warm)
    const misses = Array.from(trail.at, (at, index) => {
      const left = exact(at)
      const miss = (c: number, share: number) => Math.abs(c - (25 - 20 * share))
      return {
        at,
        shell: miss(trail.shellC[index]!, left.shell),
        mean: miss(trail.meanC[index]!, left.mean),
        core: miss(trail.coreC[index]!, left.core)
      }
    })
    expect(Math.max(...misses.map(({ mean }) => mean))).toBeLessThan(0.1)
    expect(Math.max(...misses.map(({ core }) => core))).toBeLessThan(0.11)
    // In its first minutes the shell bends more sharply than cells and steps can follow.
    expect(Math.max(...misses.map(({ at, shell }) => (at < hourS ? 0 : shell)))).toBeLessThan(0.1)
    expect(Math.max(...misses.map(({ shell }) => shell))).toBeLessThan(0.2)
  })

  it('lumped: e^(−t/τ) to the last digit', () => {
    const tauS = (kit.rhoKgM3 * kit.cJKgK * 0.05625) / 8
    const trail = lumpedTrail(kit, cold, 10 * hourS, warm)
    expect(trail.meanC.at(-1)).toBeCloseTo(25 - 20 * Math.exp((-10 * hourS) / tauS), 9)
  })
})

/** Box, store, deck at night with wind: what a kit goes through. */
const changing = (s: number) => ({ toC: 15 + 12 * Math.sin(s / 9000), hWM2K: s % 20_000 < 9000 ? 8 : 30 })
const body = fc.record({
  radiusM: fc.double({ min: 0.08, max: 0.25, noNaN: true }),
  heightM: fc.double({ min: 0.2, max: 0.9, noNaN: true }),
  rhoKgM3: fc.double({ min: 800, max: 1300, noNaN: true }),
  cJKgK: fc.double({ min: 1200, max: 2500, noNaN: true }),
  kWMK: fc.double({ min: 0.1, max: 0.4, noNaN: true }),
  hWM2K: fc.constant(8),
  exposedEnds: fc.constantFrom(0, 1, 2)
})
const temperature = fc.double({ min: -20, max: 50, noNaN: true })

describe('laws', () => {
  it('energy: what comes in through the faces is what the cells hold, and the heat of the trail what the mean has gained, to 0.1 %', () => {
    fc.assert(
      fc.property(body, fc.double({ min: 1, max: 20, noNaN: true }), temperature, (one, mixing, c) => {
        const stirred = { ...one, kWMK: one.kWMK * mixing }
        const profile = uniformProfile(stirred, c)
        let takenK = 0
        for (let s = 0; s < 48 * hourS; s += 300) {
          const { toC, hWM2K } = changing(s)
          takenK += advance(profile, sweepsOf(profile, stirred, hWM2K, 300), toC)
          expect(placesOf(profile, 0, toC).mean - c).toBeCloseTo(takenK, 8)
        }
        const trail = conductionTrail(one, mixing, { at: 0, c }, 48 * hourS, changing)
        const capacityJK = one.rhoKgM3 * one.cJKgK * Math.PI * one.radiusM ** 2 * one.heightM
        expect(trail.heatJ.at(-1)! / capacityJK).toBeCloseTo(trail.meanC.at(-1)! - c, 6)
      }),
      { numRuns: 15 }
    )
  })

  it('energy: the shell that is shown lets in the heat that is counted, to 1 % over a day and a half', () => {
    const infinite = { ...kit, exposedEnds: 0 }
    const trail = conductionTrail(infinite, 5, cold, 36 * hourS, warm)
    const faceM2 = 2 * Math.PI * kit.radiusM * kit.heightM
    let heatJ = 0
    for (let n = 1; n < trail.at.length; n += 1) heatJ += 8 * faceM2 * (25 - trail.shellC[n]!) * (trail.at[n]! - trail.at[n - 1]!)
    expect(Math.abs(heatJ / trail.heatJ.at(-1)! - 1)).toBeLessThan(0.01)
  })

  it('a warmer box is never slower', () => {
    fc.assert(
      fc.property(body, fc.double({ min: 1, max: 20, noNaN: true }), temperature, temperature, temperature, (one, mixing, c, a, b) => {
        const run = (toC: number) => kitCourses(one, mixing, { at: 0, c }, 24 * hourS, steady({ toC, hWM2K: 8 }))
        const [cooler, warmer] = [run(Math.min(a, b)), run(Math.max(a, b))]
        for (const course of ['fast', 'likely', 'slow'] as const) {
          for (const series of ['shellC', 'meanC', 'coreC'] as const) {
            // The centre is drawn through the inmost cells by a parabola: a hair of overshoot while nothing has come there.
            const slack = 1e-9 + (series === 'coreC' ? 0.03 * Math.abs(a - b) : 0)
            const gains = warmer[course][series].map((value, index) => value - cooler[course][series][index]!)
            expect(Math.min(...gains)).toBeGreaterThanOrEqual(-slack)
          }
        }
      }),
      { numRuns: 15 }
    )
  })

  it('never beyond what it was and what is around it, whatever the step', () => {
    fc.assert(
      fc.property(body, fc.double({ min: 1, max: 1000, noNaN: true }), fc.double({ min: 0.5, max: 300, noNaN: true }), (one, mixing, hWM2K) => {
        const trail = conductionTrail(one, mixing, { at: 0, c: 0 }, 12 * hourS, steady({ toC: 1, hWM2K }))
        for (const series of ['shellC', 'meanC'] as const) {
          const steps = trail[series].map((value, index) => value - (trail[series][index - 1] ?? 0))
          expect(Math.min(...steps)).toBeGreaterThanOrEqual(-1e-9)
          expect(Math.max(...trail[series])).toBeLessThanOrEqual(1 + 1e-9)
        }
      }),
      { numRuns: 15 }
    )
  })

  it('the truth of a finer, independent, explicit solver lies between the two bounds, and on the likely course when its mixing is known', () => {
    const bodies = fc.record({ ...kitBodies(), mixing: fc.double({ min: 1, max: 12, noNaN: true }), toC: fc.constantFrom(-5, 10, 30, 40) })
    fc.assert(
      fc.property(bodies, ({ mixing, toC, ...one }) => {
        const truth = finerMeans({ ...one, kWMK: one.kWMK * mixing }, 20, 12, () => ({ toC, hWM2K: one.hWM2K }))
        const { fast, slow, likely } = kitCourses(one, mixing, { at: 0, c: 20 }, 12 * hourS, steady({ toC, hWM2K: one.hWM2K }))
        const way = Math.sign(toC - 20)
        // The five-minute steps are good to half a percent of the difference in temperature.
        const withinK = 0.02 + 0.005 * Math.abs(toC - 20)
        for (const [hour, c] of truth.entries()) {
          const at = (trail: typeof fast) => valueAt(trail, 'meanC', hour * hourS)!
          expect(way * (at(fast) - c)).toBeGreaterThan(-0.05)
          expect(way * (c - at(slow))).toBeGreaterThan(-withinK)
          expect(Math.abs(at(likely) - c)).toBeLessThan(withinK)
        }
      }),
      { numRuns: 4 }
    )
  }, 60_000)

  it('carries its profile through surroundings that change, as the finer solver does', () => {
    const one = { ...kit, kWMK: 0.18 * 3 }
    const truth = finerMeans(one, 20, 12, changing)
    const trail = conductionTrail(one, 1, { at: 0, c: 20 }, 12 * hourS, changing)
    for (const [hour, c] of truth.entries()) expect(Math.abs(valueAt(trail, 'meanC', hour * hourS)! - c)).toBeLessThan(0.1)
  }, 60_000)
})

function kitBodies() {
  return {
    radiusM: fc.double({ min: 0.12, max: 0.2, noNaN: true }),
    heightM: fc.double({ min: 0.35, max: 0.6, noNaN: true }),
    rhoKgM3: fc.constant(1100),
    cJKgK: fc.constant(1900),
    kWMK: fc.constant(0.18),
    hWM2K: fc.constantFrom(5, 8, 12),
    exposedEnds: fc.constantFrom(0, 1, 2)
  }
}

describe('what is not known', () => {
  it('ends where nobody knows the surroundings', () => {
    const trail = conductionTrail(kit, 1, cold, 24 * hourS, (at) => (at < 2 * hourS ? { toC: 25, hWM2K: 8 } : null))
    expect(trail.at.at(-1)).toBe(2 * hourS)
    expect(valueAt(trail, 'meanC', 3 * hourS)).toBeNull()
    expect(valueAt(trail, 'meanC', -1)).toBeNull()
    expect(valueAt(trail, 'meanC', Number.NaN)).toBeNull()
  })

  it('is bounded: ten days at most, also until the end of time', () => {
    expect(lumpedTrail(kit, cold, Number.POSITIVE_INFINITY, warm).at.at(-1)).toBe(10 * 86_400)
    expect(lumpedTrail(kit, cold, Number.NaN, warm).at).toEqual(new Float64Array([0]))
    expect(lumpedTrail(kit, cold, -1, warm).at).toEqual(new Float64Array([0]))
  })

  it.each([
    [{ ...kit, radiusM: Number.NaN }, 5, 20],
    [{ ...kit, kWMK: 0 }, 5, 20],
    [kit, 0.5, 20],
    [kit, Number.NaN, 20],
    [kit, 5, Number.NaN]
  ])('refuses %o, mixing %d, %d °C', (one, mixing, c) => {
    expect(() => kitCourses(one, mixing, { at: 0, c }, hourS, warm)).toThrow(RangeError)
  })
})
