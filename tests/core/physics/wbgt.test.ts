import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runFormula } from '../../../src/core/formulas/index.js'
import { wetBulbC } from '../../../src/core/physics/air.js'
import { isWbgtAtMost, type WbgtInput, wbgt, wbgtAt2m } from '../../../src/core/physics/wbgt.js'
import { windAt2mKmh } from '../../../src/core/physics/wbgt-wind.js'
import { numberOf } from '../../support/formula-number.js'
import { expected, input, type Row, rowsOf, tolerance } from '../../truth/rows.js'

const rows = rowsOf('wbgt.json', '2j')
const night = 'night guard'

function given(row: Row, windMs: number): WbgtInput {
  return Object.freeze({
    airC: input(row, 'temperature'),
    rhPct: input(row, 'rh'),
    pressureHpa: input(row, 'pressure'),
    windKmh: 3.6 * windMs,
    sunWm2: input(row, 'shortwave'),
    directFraction: 'directFraction' in row.inputs ? input(row, 'directFraction') : 0,
    cosZenith: input(row, 'cosZenith')
  })
}

function near(row: Row, name: string, ours: number): void {
  expect(Math.abs(ours - expected(row, name)), `${name} ${ours}, ${row.source}`).toBeLessThanOrEqual(tolerance(row, name))
}

/** Wind at 10 m, m/s, that is `wind2Ms` at 2 m; null where the steps between the stability classes leave it out. */
function at10m(wind2Ms: number, sunWm2: number, cosZenith: number): number | null {
  const winds = [0.15, 0.2, 0.25, 0.3].map((exponent) => wind2Ms / 0.2 ** exponent)
  return winds.find((ms) => Math.abs(windAt2mKmh(3.6 * ms, sunWm2, cosZenith) / 3.6 - wind2Ms) < 1e-9) ?? null
}

describe('2j: Liljegren, wind at 10 m', () => {
  it.each(rows.filter((row) => 'wind10m' in row.inputs && 'wbgt' in row.expected))('$id $inputs.temperature.value °C', (row) => {
    near(row, 'wbgt', numberOf(runFormula('wbgt', { ...given(row, input(row, 'wind10m')) }), 'wbgtC'))
  })

  it.each(rows.filter((row) => 'wind2m' in row.expected))('$id: brought to 2 m', (row) => {
    const cosZenith = 'cosZenith' in row.inputs ? input(row, 'cosZenith') : 0
    near(row, 'wind2m', windAt2mKmh(3.6 * input(row, 'wind10m'), input(row, 'shortwave'), cosZenith) / 3.6)
  })
})

describe('2j: Liljegren, wind at 2 m', () => {
  // The psychrometric wet bulb of these rows is that of a shaded wick; it is no part of WBGT, and our wet bulb is the thermodynamic one.
  const at2m = rows.filter((row) => 'wind2m' in row.inputs)

  it.each(at2m.filter((row) => !row.quantity.startsWith(night)))('$id $inputs.temperature.value °C', (row) => {
    const { globeC, naturalWetBulbC, wbgtC } = wbgtAt2m(given(row, input(row, 'wind2m')))
    near(row, 'globe', globeC)
    near(row, 'naturalWetBulb', naturalWetBulbC)
    near(row, 'wbgt', wbgtC)
  })

  it('the same through the formula, with the wind at 10 m that belongs to it', () => {
    const found = at2m.flatMap((row) => {
      const ms = at10m(input(row, 'wind2m'), input(row, 'shortwave'), input(row, 'cosZenith'))
      if (ms === null || row.quantity.startsWith(night)) return []
      const answer = runFormula('wbgt', { ...given(row, ms) })
      near(row, 'globe', numberOf(answer, 'globeC'))
      near(row, 'naturalWetBulb', numberOf(answer, 'naturalWetBulbC'))
      near(row, 'wbgt', numberOf(answer, 'wbgtC'))
      return [row.id]
    })
    expect(found.length).toBeGreaterThanOrEqual(6)
  })

  // The reference code fails on the globe here; ours has one, a little below the air under the sky.
  it.each(at2m.filter((row) => row.quantity.startsWith(night)))('$id: no sun, cosine 0', (row) => {
    const { globeC, naturalWetBulbC } = wbgtAt2m(given(row, input(row, 'wind2m')))
    near(row, 'naturalWetBulb', naturalWetBulbC)
    expect(globeC).toBeLessThan(28)
    expect(globeC).toBeGreaterThan(25)
  })
})

// 2i: the simplified WBGT of the Australian Bureau of Meteorology knows neither sun nor wind and is not used; it takes moderately
// strong sun and light wind for granted, and there the two must meet.
describe('2i: simplified WBGT', () => {
  it.each(rowsOf('wbgt.json', '2i'))('$id: within 2.5 K under 700 W/m²', (row) => {
    const weather = { pressureHpa: 1013.25, windKmh: 7.2, sunWm2: 700, directFraction: 0.7, cosZenith: 0.8 }
    const { wbgtC } = wbgt({ airC: input(row, 'temperature'), rhPct: input(row, 'rh'), ...weather })
    expect(Math.abs(wbgtC - expected(row, 'wbgt'))).toBeLessThan(2.5)
  })
})

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
/** The direct share of a beam that is no stronger than the sun has. */
const people: fc.Arbitrary<WbgtInput> = fc
  .record({
    airC: number(-60, 60),
    rhPct: number(0.1, 100),
    pressureHpa: number(500, 1100),
    windKmh: number(0, 300),
    sunWm2: number(0, 1500),
    beamWm2: number(0, 1400),
    cosZenith: number(-1, 1)
  })
  .map(({ beamWm2, ...rest }) =>
    Object.freeze({ ...rest, directFraction: Math.min(1, rest.sunWm2 === 0 ? 0 : (beamWm2 * Math.max(0, rest.cosZenith)) / rest.sunWm2) })
  )

describe('people in the weather', () => {
  it('have a WBGT of finite parts, weighed 0.7, 0.2 and 0.1', () => {
    fc.assert(
      fc.property(people, (input) => {
        const { wbgtC, globeC, naturalWetBulbC } = wbgt(input)
        expect(wbgtC).toBeCloseTo(0.7 * naturalWetBulbC + 0.2 * globeC + 0.1 * input.airC, 9)
        expect(globeC).toBeLessThan(input.airC + 240)
        expect(naturalWetBulbC).toBeLessThan(Math.min(100, input.airC + 59))
        expect(naturalWetBulbC).toBeGreaterThan(Math.max(-108, input.airC - 79))
      })
    )
  })

  it('are never cooled by more sun or moister air, and the globe is not above the air at night', () => {
    fc.assert(
      fc.property(people, number(0, 1), (input, share) => {
        const { globeC, naturalWetBulbC } = wbgtAt2m(input)
        const dimmer = wbgtAt2m({ ...input, sunWm2: input.sunWm2 * share })
        expect(dimmer.globeC).toBeLessThanOrEqual(globeC + 1e-9)
        expect(dimmer.naturalWetBulbC).toBeLessThanOrEqual(naturalWetBulbC + 1e-9)
        const moister = wbgtAt2m({ ...input, rhPct: 100 - (100 - input.rhPct) * share })
        expect(moister.wbgtC).toBeGreaterThanOrEqual(wbgtAt2m(input).wbgtC - 1e-9)
        // The sky of the model is brighter than a black one from a vapour pressure of 48 hPa: only below is the night always cold.
        const airC = Math.min(31, input.airC)
        expect(wbgtAt2m({ ...input, airC, sunWm2: 0 }).globeC).toBeLessThanOrEqual(airC + 1e-9)
      })
    )
  })

  it('in a strong wind without sun feel the thermodynamic wet bulb', () => {
    for (const airC of [10, 20, 30, 40]) {
      for (const rhPct of [20, 50, 90]) {
        const { naturalWetBulbC } = wbgt({ airC, rhPct, pressureHpa: 1013, windKmh: 60, sunWm2: 0, directFraction: 0, cosZenith: 0 })
        expect(Math.abs(naturalWetBulbC - wetBulbC(airC, rhPct, 1013))).toBeLessThan(0.5)
      }
    }
  })

  it('are known to stay below a limit without being reckoned, and never said to where they do not', () => {
    let known = 0
    let asked = 0
    fc.assert(
      fc.property(people, number(-4, 4), (input, above) => {
        const { wbgtC } = wbgt(input)
        if (isWbgtAtMost(wbgtC + above, input)) expect(wbgtC).toBeLessThanOrEqual(wbgtC + above + 1e-9)
        asked += above > 1 ? 1 : 0
        known += above > 1 && isWbgtAtMost(wbgtC + above, input) ? 1 : 0
      }),
      { numRuns: 500 }
    )
    expect(known).toBeGreaterThan(0.9 * asked)
  })

  it('get no beam from a sun below half a degree', () => {
    const low = { airC: 20, rhPct: 50, pressureHpa: 1013, windKmh: 10, sunWm2: 100, directFraction: 0.9 }
    for (const cosZenith of [0.0087, 0, -0.5]) expect(wbgtAt2m({ ...low, cosZenith })).toEqual(wbgtAt2m({ ...low, directFraction: 0, cosZenith }))
  })

  it('are not asked to stand in a stronger beam than the sun has', () => {
    const noSuch = { airC: 20, rhPct: 50, pressureHpa: 1013, windKmh: 10, sunWm2: 1000, directFraction: 0.9, cosZenith: 0.1 }
    expect(runFormula('wbgt', noSuch)).toMatchObject({ ok: false, code: 'out-of-range', word: 'directFraction' })
  })

  it.each(['airC', 'rhPct', 'pressureHpa', 'windKmh', 'sunWm2', 'directFraction', 'cosZenith'])('refuse %s that is no number or far off', (key) => {
    const fine = { airC: 30, rhPct: 50, pressureHpa: 1013, windKmh: 10, sunWm2: 500, directFraction: 0.5, cosZenith: 0.6 }
    for (const value of [Number.NaN, -2000, 2000]) expect(() => wbgt({ ...fine, [key]: value })).toThrow(RangeError)
  })
})
