import fc from 'fast-check'
import psychrolib from 'psychrolib'
import { describe, expect, it } from 'vitest'
import {
  airState,
  condensationC,
  dewPointC,
  frostPointC,
  humidityRatio,
  humidityRatioOfWetBulb,
  relativeHumidityPct,
  saturationIcePa,
  saturationWaterPa,
  standardPressureHpa,
  vapourPa,
  wetBulbC
} from '../../../src/core/physics/air.js'
import { expected, input, type Row, rowsOf, tolerance } from '../../truth/rows.js'

const file = 'psychrometrics.json'
const air = fc.double({ min: -60, max: 60, noNaN: true })
const humidity = fc.double({ min: 1, max: 100, noNaN: true })

function near(row: Row, name: string, value: number): void {
  const allowed = name.startsWith('dewPoint') ? Math.max(tolerance(row, name), widerFor(row, name)) : tolerance(row, name)
  expect(Math.abs(value - expected(row, name)), `${row.id} ${name} ${value}, ${row.source}`).toBeLessThanOrEqual(allowed)
}

function widerFor(row: Row, name: string): number {
  return name === 'dewPointOverWater' || row.id === 'psy-108' ? (wider[row.id] ?? 0) : 0
}

/** psychrolib takes humidity over ice at and below 0.01 °C; ours is over water always. */
function overWater(airC: number, rhPct: number): number {
  return airC > 0.01 ? rhPct : (rhPct * saturationIcePa(airC)) / saturationWaterPa(airC)
}

/**
 * Rows whose own tolerance is exceeded, by how much at most, and why. psy-108 is cut to 5 in a table of whole degrees where ASHRAE gives 6.004.
 */
const wider: Readonly<Record<string, number>> = {
  'psy-108': 1.01
}

describe('1a: moist-air states of psychrolib', () => {
  it.each(rowsOf(file, '1a'))('$id', (row) => {
    const airC = input(row, 'dryBulb')
    const rhPct = input(row, 'rh')
    const state = airState({ airC, rhPct: overWater(airC, rhPct), pressureHpa: input(row, 'pressure') / 100 })

    near(row, 'satVapPressure', airC > 0.01 ? state.saturationWaterPa : state.saturationIcePa)
    near(row, 'vapPressure', state.vapourPa)
    near(row, 'humidityRatio', state.humidityRatio)
    near(row, 'wetBulb', state.wetBulbC)
    // Below freezing its dew point is the frost point.
    near(row, 'dewPoint', state.frostPointC ?? state.dewPointC)
    // The row's own dew point over water takes the humidity over water, too.
    near(row, 'dewPointOverWater', dewPointC(airC, rhPct))
  })
})

describe('1b: published figures', () => {
  // Not checked: psy-063 … psy-067, pressures by altitude. There is no formula for them: a site's pressure comes with the weather.
  const [dew, wet, ratio] = rowsOf(file, '1b') as [Row, Row, Row]

  it('dew point, wet bulb, humidity ratio', () => {
    near(dew, 'dewPoint', dewPointC(input(dew, 'dryBulb'), input(dew, 'rh')))
    near(wet, 'wetBulb', wetBulbC(input(wet, 'dryBulb'), input(wet, 'rh'), input(wet, 'pressure') / 100))
    near(ratio, 'humidityRatio', humidityRatioOfWetBulb(input(ratio, 'dryBulb'), input(ratio, 'wetBulb'), input(ratio, 'pressure') / 100))
  })

  it.each(rowsOf(file, '1b').filter((row) => row.quantity.startsWith('saturation')))('$id saturation at $inputs.temperature.value °C', (row) => {
    const tC = input(row, 'temperature')
    near(row, 'satVapPressure', tC < 0 ? saturationIcePa(tC) : saturationWaterPa(tC))
  })

  it('example 1, read from the chart: ratio, dew point and humidity from a wet bulb', () => {
    const row = rowsOf(file, '1b').find(({ id }) => id === 'psy-069') as Row
    const airC = input(row, 'dryBulb')
    const ratio = humidityRatioOfWetBulb(airC, input(row, 'wetBulb'), input(row, 'pressure') / 100)
    const pa = (input(row, 'pressure') * ratio) / (0.621945 + ratio)
    const rhPct = (100 * pa) / saturationWaterPa(airC)

    near(row, 'humidityRatio', ratio)
    near(row, 'rh', rhPct)
    near(row, 'dewPoint', dewPointC(airC, rhPct))
  })

  it('every row of the group is one of the above', () => {
    const kinds = new Set(rowsOf(file, '1b').map((row) => row.quantity))
    expect([...kinds].sort()).toEqual(
      [
        'ASHRAE ch. 1 Example 1 (chart reading)',
        'dew point from RH',
        'humidity ratio from wet bulb',
        'saturation vapour pressure (Table 3)',
        'standard-atmosphere pressure (Table 1)',
        'wet bulb from RH'
      ].sort()
    )
  })
})

describe('1c: Magnus sets', () => {
  const rows = rowsOf(file, '1c')
  const pointRows = rows.filter((row) => row.quantity.startsWith('dew point'))

  it.each(pointRows)('$id: the dew point lies among those of the four sets', (row) => {
    const sets = ['sonntag1990', 'alduchov1996', 'bolton1980', 'tetensFao'].map((name) => expected(row, name))
    const dewC = dewPointC(input(row, 'dryBulb'), input(row, 'rh'))

    expect(dewC).toBeGreaterThan(Math.min(...sets) - 0.001)
    expect(dewC).toBeLessThan(Math.max(...sets) + 0.001)
  })

  // Coefficients by themselves check nothing: each set's curve must stay within its known distance of ours.
  it.each(rows.filter((row) => !pointRows.includes(row)))('$id: $quantity', (row) => {
    const overIce = row.quantity.includes('ice')
    const curve = row.quantity.startsWith('base-10')
      ? (t: number) => 100 * expected(row, 'A') * 10 ** ((expected(row, 'm') * t) / (t + expected(row, 'Tn')))
      : (t: number) => 100 * expected(row, 'A') * Math.exp((expected(row, 'B') * t) / (expected(row, 'C') + t))

    for (const t of overIce ? [-40, -20, -10, -1, 0] : [0, 5, 10, 20, 30, 40]) {
      const ours = overIce ? saturationIcePa(t) : saturationWaterPa(t)
      expect(Math.abs(curve(t) / ours - 1), `${t} °C`).toBeLessThan(overIce ? 0.006 : 0.004)
    }
  })

  it('is the WMO set below 0 °C', () => {
    const row = rows.find(({ id }) => id === 'psy-072') as Row
    for (const t of [-45, -20, -5]) {
      const wmo = 100 * expected(row, 'A') * Math.exp((expected(row, 'B') * t) / (expected(row, 'C') + t))
      expect(saturationWaterPa(t) / wmo).toBeCloseTo(1, 4)
    }
  })
})

describe('1d, 1e: other published values', () => {
  it.each(rowsOf(file, '1d', '1e'))('$id $quantity', (row) => {
    const airC = input(row, 'dryBulb')
    if (row.quantity.startsWith('RH')) near(row, 'rh', relativeHumidityPct(airC, input(row, 'dewPoint')))
    else if (row.quantity.startsWith('wet bulb')) near(row, 'wetBulb', wetBulbC(airC, input(row, 'rh'), standardPressureHpa))
    else near(row, 'dewPoint', dewPointC(airC, input(row, 'rh')))
  })
})

describe('1f: 3 °C rule', () => {
  it.each(rowsOf(file, '1f'))('$id', (row) => {
    const dewC = dewPointC(input(row, 'dryBulb'), input(row, 'rh'))
    const marginK = input(row, 'surface') - dewC

    near(row, 'dewPointOverWater' in row.expected ? 'dewPointOverWater' : 'dewPoint', dewC)
    near(row, 'margin', marginK)
    expect(marginK >= 3 ? 1 : 0).toBe(expected(row, 'pass'))
  })
})

describe('against psychrolib (general library, ASHRAE 2017)', () => {
  psychrolib.SetUnitSystem(psychrolib.SI)
  const grid = [-30, -20, -10, -5, -1, 0.5, 1, 5, 10, 20, 30, 40, 50, 60].flatMap((airC) =>
    [5, 20, 40, 60, 80, 95, 100].map((rhPct) => ({ airC, rhPct }))
  )

  it.each([900, 1013.25])('agrees on the grid at %d hPa', (pressureHpa) => {
    for (const { airC, rhPct } of grid) {
      const state = airState({ airC, rhPct: overWater(airC, rhPct), pressureHpa })
      const at = `${airC} °C ${rhPct} %`
      const theirWet = psychrolib.GetTWetBulbFromRelHum(airC, rhPct / 100, pressureHpa * 100)

      expect(state.humidityRatio, at).toBeCloseTo(psychrolib.GetHumRatioFromRelHum(airC, rhPct / 100, pressureHpa * 100), 6)
      expect(state.frostPointC ?? state.dewPointC, at).toBeCloseTo(psychrolib.GetTDewPointFromRelHum(airC, rhPct / 100), 2)
      // Where an iced and a wet bulb both fit, the library's halving ends on either.
      if (Math.abs(theirWet) > 0.6) expect(Math.abs(state.wetBulbC - theirWet), at).toBeLessThan(0.003)
    }
  })
})

describe('shape', () => {
  it('the dew point is the exact inverse of the saturation curve, below 0 °C within the 0.3 % by which the Magnus form differs', () => {
    fc.assert(
      fc.property(air, humidity, (airC, rhPct) => {
        const dewC = dewPointC(airC, rhPct)
        const pa = vapourPa(airC, rhPct)
        expect(Math.abs(saturationWaterPa(dewC) / pa - 1)).toBeLessThan(dewC >= 0 ? 1e-9 : 3e-3)
        expect(relativeHumidityPct(airC, dewC)).toBeCloseTo(rhPct, 7)
      })
    )
  })

  it('dew point ≤ wet bulb ≤ air; frost point between dew point and 0 °C, only below 0 °C', () => {
    fc.assert(
      fc.property(air, humidity, (airC, rhPct) => {
        const state = airState({ airC, rhPct, pressureHpa: standardPressureHpa })
        expect(state.dewPointC).toBeLessThanOrEqual(airC)
        expect(state.wetBulbC).toBeLessThanOrEqual(airC)
        expect(state.wetBulbC).toBeGreaterThanOrEqual(state.dewPointC - 1e-9)
        expect(state.frostPointC === null).toBe(state.dewPointC >= 0)
        if (state.frostPointC === null) return
        expect(state.frostPointC).toBeGreaterThanOrEqual(state.dewPointC)
        expect(state.frostPointC).toBeLessThanOrEqual(0)
        expect(condensationC(airC, rhPct)).toBe(state.frostPointC)
      })
    )
  })

  it('the wet bulb gives back the humidity ratio that it came from', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 60, noNaN: true }), humidity, (airC, rhPct) => {
        const wetC = wetBulbC(airC, rhPct, 1000)
        expect(humidityRatioOfWetBulb(airC, wetC, 1000)).toBeCloseTo(humidityRatio(vapourPa(airC, rhPct), 1000), 7)
      })
    )
  })

  it('is continuous at 0 °C', () => {
    expect(saturationWaterPa(-1e-9)).toBeCloseTo(saturationWaterPa(0), 6)
    expect(dewPointC(10, 49.77)).toBeCloseTo(dewPointC(10, 49.7701), 3)
  })
})

describe('ends', () => {
  it('at 100 % everything is the air temperature', () => {
    for (const airC of [-60, -10, 0, 0.01, 20, 60]) {
      expect(dewPointC(airC, 100)).toBe(airC)
      expect(wetBulbC(airC, 100, standardPressureHpa)).toBe(airC)
    }
    expect(frostPointC(0, 100)).toBeNull()
    expect(condensationC(0, 100)).toBe(0)
  })

  it('answers at the ends of its range', () => {
    for (const airC of [-60, 60])
      for (const rhPct of [0.001, 100])
        for (const value of Object.values(airState({ airC, rhPct, pressureHpa: 500 }))) expect(value ?? 0).not.toBeNaN()
  })

  it('the frost point of 100 % over water lies above the air', () => {
    expect(frostPointC(-10, 100)).toBeGreaterThan(-10)
  })

  it('takes a dew point above the air as 100 %', () => {
    expect(relativeHumidityPct(20, 20.1)).toBe(100)
  })

  it.each([
    [Number.NaN, 50],
    [20, Number.NaN],
    [20, 0],
    [20, -1],
    [20, 100.1],
    [90.1, 50],
    [Number.POSITIVE_INFINITY, 50]
  ])('refuses %d °C, %d %%', (airC, rhPct) => {
    expect(() => dewPointC(airC, rhPct)).toThrow(RangeError)
    expect(() => condensationC(airC, rhPct)).toThrow(RangeError)
    expect(() => airState({ airC, rhPct, pressureHpa: standardPressureHpa })).toThrow(RangeError)
  })

  it.each([499, 1101, Number.NaN])('refuses a pressure of %d hPa', (pressureHpa) => {
    expect(() => airState({ airC: 20, rhPct: 50, pressureHpa })).toThrow(RangeError)
  })

  it('leaves its input alone', () => {
    const input = Object.freeze({ airC: 20, rhPct: 50, pressureHpa: standardPressureHpa })
    expect(airState(input)).toEqual(airState(input))
  })
})
