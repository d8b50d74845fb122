import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runFormula } from '../../../src/core/formulas/index.js'
import { clearSkyEmissivity, cloudFactor, sky, skyLongWaveWm2, stefanBoltzmann } from '../../../src/core/physics/sky.js'
import { numberOf } from '../../support/formula-number.js'
import { expected, input, rowsOf, tolerance } from '../../truth/rows.js'

const file = 'surface.json'

/** Rows of other formulas than the one that is used, which the two of Berdahl & Martin already frame. */
const otherFormula: Readonly<Record<string, string>> = {
  'sun-039': 'EnergyPlus has a later fit of Berdahl & Martin, 0.05 above the one of 1984, and Clark & Allen, Brunt and Idso',
  'sun-041': 'Brunt is not used',
  'sun-042': 'Swinbank is not used: it knows no humidity'
}

describe('3e: Berdahl & Martin 1984', () => {
  it('sun-040: coefficients', () => {
    const row = rowsOf(file, '3e').find(({ id }) => id === 'sun-040')
    if (row === undefined) throw new Error('no row')
    const [dry, zero, moist] = [clearSkyEmissivity(-10), clearSkyEmissivity(0), clearSkyEmissivity(10)]

    expect(zero).toBe(expected(row, 'a'))
    expect((moist - dry) / 0.2).toBeCloseTo(expected(row, 'b'), 10)
    expect((moist + dry - 2 * zero) / 0.02).toBeCloseTo(expected(row, 'c'), 10)
  })

  it.each(rowsOf(file, '3e').filter((row) => 'berdahlMartin1984' in row.expected))('$id $inputs.temperature.value °C', (row) => {
    const given = { airC: input(row, 'temperature'), dewPointC: input(row, 'dewPoint'), cloudPct: 0 }
    const emissivity = numberOf(runFormula('sky', given), 'emissivity')
    const skyC = numberOf(runFormula('sky', given), 'skyC')

    expect(Math.abs(emissivity - expected(row, 'berdahlMartin1984'))).toBeLessThanOrEqual(tolerance(row, 'berdahlMartin1984'))
    expect(Math.abs(skyC - expected(row, 'TskyBm1984'))).toBeLessThanOrEqual(tolerance(row, 'TskyBm1984'))
  })

  it.each(rowsOf(file, '3e').filter((row) => 'factor' in row.expected))('$id: cloud $inputs.N.value tenths', (row) => {
    const cloudPct = 10 * input(row, 'N')
    const given = { airC: input(row, 'temperature'), dewPointC: input(row, 'dewPoint') }
    const clear = numberOf(runFormula('sky', { ...given, cloudPct: 0 }), 'emissivity')
    const cloudy = numberOf(runFormula('sky', { ...given, cloudPct }), 'emissivity')

    // The rows put the factor on another clear sky; the factor itself is the same.
    expect(Math.abs(cloudFactor(cloudPct) - expected(row, 'factor'))).toBeLessThanOrEqual(tolerance(row, 'factor'))
    expect(Math.abs(cloudy / clear - expected(row, 'factor'))).toBeLessThanOrEqual(tolerance(row, 'factor'))
  })

  it('leaves out only what is listed', () => {
    const left = rowsOf(file, '3e').filter(({ id, expected: e }) => id !== 'sun-040' && !('berdahlMartin1984' in e) && !('factor' in e))
    expect(left.map(({ id }) => id)).toEqual(Object.keys(otherFormula))
  })
})

const air = fc.double({ min: -60, max: 60, noNaN: true })
const belowAir = fc.double({ min: 0, max: 50, noNaN: true })
const cloud = fc.double({ min: 0, max: 100, noNaN: true })

describe('the sky', () => {
  it('is never warmer than the air, and never colder for more cloud or a higher dew point', () => {
    fc.assert(
      fc.property(air, belowAir, cloud, cloud, (airC, k, a, b) => {
        const { emissivity, skyC } = sky(airC, airC - k, Math.min(a, b))
        expect(emissivity).toBeGreaterThan(0)
        expect(emissivity).toBeLessThanOrEqual(1)
        expect(skyC).toBeLessThanOrEqual(airC)
        expect(sky(airC, airC - k, Math.max(a, b)).skyC).toBeGreaterThanOrEqual(skyC)
        expect(sky(airC, airC - k / 2, Math.min(a, b)).skyC).toBeGreaterThanOrEqual(skyC)
      })
    )
  })

  it('sends down what a black one of its temperature does', () => {
    const { skyC } = sky(12, 7, 40)
    expect(skyLongWaveWm2(12, 7, 40)).toBeCloseTo(stefanBoltzmann * (skyC + 273.15) ** 4, 8)
  })

  it.each([
    [20, 20.001, 0],
    [20, Number.NaN, 0],
    [Number.NaN, 5, 0],
    [20, 5, Number.NaN],
    [20, 5, -1],
    [20, 5, 101],
    [91, 5, 0]
  ])('refuses %d °C, dew point %d, cloud %d', (airC, dewPointC, cloudPct) => {
    expect(() => sky(airC, dewPointC, cloudPct)).toThrow(RangeError)
  })

  it('names the dew point where it is above the air', () => {
    expect(runFormula('sky', { airC: 5, dewPointC: 6, cloudPct: 0 })).toMatchObject({ ok: false, code: 'out-of-range', word: 'dewPointC' })
  })
})
