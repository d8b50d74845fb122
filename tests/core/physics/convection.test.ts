import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runFormula } from '../../../src/core/formulas/index.js'
import { convectionWm2K, windAtRoofKmh } from '../../../src/core/physics/convection.js'
import { stefanBoltzmann } from '../../../src/core/physics/sky.js'
import { numberOf } from '../../support/formula-number.js'
import { expected, input, type Row, rowsOf, tolerance } from '../../truth/rows.js'

const rows = rowsOf('surface.json', '3f')

function only(quantity: string): readonly Row[] {
  const found = rows.filter((row) => row.quantity.startsWith(quantity))
  if (found.length === 0) throw new Error(`no rows of ${quantity}`)
  return found
}

/** Coefficients that join convection and long-wave in one, or are for indoor-like air: the balance keeps the two apart. */
const notUsed: Readonly<Record<string, string>> = {
  'ISO 6946': 'surface resistances for heat loss, radiation included',
  'standard external': 'the same',
  'external surface resistance': 'the same',
  'ASHRAE simple combined': 'radiation included',
  TARP: 'free convection alone; the constant of McAdams stands for it'
}

describe('3f: convection', () => {
  it.each(only('McAdams'))('$id $inputs.wind.value m/s', (row) => {
    const h = numberOf(runFormula('convection', { windKmh: 3.6 * input(row, 'wind') }), 'hWm2K')
    expect(Math.abs(h - expected(row, 'h'))).toBeLessThanOrEqual(tolerance(row, 'h'))
  })

  it.each(only('wind at roof height'))('$id', (row) => {
    const ms = windAtRoofKmh(3.6 * input(row, 'windMet'), input(row, 'z')) / 3.6
    expect(Math.abs(ms - expected(row, 'windAtZ'))).toBeLessThanOrEqual(tolerance(row, 'windAtZ'))
  })

  it.each(only('black-body'))('$id: 4σT³', (row) => {
    const hr = 4 * stefanBoltzmann * (input(row, 'meanTemperature') + 273.15) ** 3
    expect(Math.abs(hr - expected(row, 'hr0'))).toBeLessThanOrEqual(tolerance(row, 'hr0'))
  })

  it('leaves out only what is listed', () => {
    const tested = [...only('McAdams'), ...only('wind at roof height'), ...only('black-body')]
    const left = rows.filter((row) => !tested.includes(row))
    for (const { quantity } of left)
      expect(
        Object.keys(notUsed).some((start) => quantity.startsWith(start)),
        quantity
      ).toBe(true)
  })
})

describe('wind', () => {
  it('carries off more heat the harder it blows, and is less over a low roof than at 10 m in the open', () => {
    const wind = fc.double({ min: 0.1, max: 300, noNaN: true })
    fc.assert(
      fc.property(wind, fc.double({ min: 0, max: 10, noNaN: true }), (windKmh, heightM) => {
        expect(convectionWm2K(windKmh)).toBeGreaterThan(convectionWm2K(windKmh / 2))
        expect(windAtRoofKmh(windKmh, heightM)).toBeLessThan(windKmh)
        expect(windAtRoofKmh(windKmh, heightM + 10)).toBeGreaterThan(windAtRoofKmh(windKmh, heightM))
      })
    )
  })

  it.each([Number.NaN, -1, 301, Number.POSITIVE_INFINITY])('of %d km/h is refused', (windKmh) => {
    expect(() => convectionWm2K(windKmh)).toThrow(RangeError)
    expect(() => windAtRoofKmh(windKmh, 8)).toThrow(RangeError)
  })

  it.each([Number.NaN, -1, 371])('at %d m is refused', (heightM) => {
    expect(() => windAtRoofKmh(10, heightM)).toThrow(RangeError)
  })
})
