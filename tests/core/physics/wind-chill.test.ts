import { describe, expect, it } from 'vitest'
import { windChillC } from '../../../src/core/physics/wind-chill.js'
import { expected, input, rowsOf, tolerance } from '../../truth/rows.js'

const file = 'heat-and-cold.json'

describe('wind chill', () => {
  it.each(rowsOf(file, '2e', '2g'))('$id, °C and km/h', (row) => {
    const chillC = windChillC(input(row, 'temperature'), input(row, 'wind')) ?? Number.NaN

    expect(Math.abs(chillC - expected(row, 'windChill')), `${chillC}, ${row.source}`).toBeLessThanOrEqual(tolerance(row, 'windChill'))
  })

  it.each(rowsOf(file, '2f'))('$id, °F and mph', (row) => {
    const chillC = windChillC((input(row, 'temperature') - 32) / 1.8, input(row, 'wind') * 1.609344) ?? Number.NaN

    expect(Math.abs(chillC * 1.8 + 32 - expected(row, 'windChill')), `${chillC}, ${row.source}`).toBeLessThanOrEqual(tolerance(row, 'windChill'))
  })

  it.each([
    [10.000001, 30],
    [0, 4.8],
    [0, 0],
    [0, -1],
    [Number.NaN, 30],
    [0, Number.NaN],
    [0, 301]
  ])('is not defined at %d °C, %d km/h', (airC, windKmh) => {
    expect(windChillC(airC, windKmh)).toBeNull()
  })

  it('is defined at its ends', () => {
    expect(windChillC(10, 4.9)).not.toBeNull()
    expect(windChillC(-60, 300)).not.toBeNull()
  })
})
