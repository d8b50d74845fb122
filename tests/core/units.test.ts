import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { awgToMm2, convert, quantityOf, round6, type Unit, unitNames } from '../../src/core/units.js'
import { expected, input, readTruth, rowsOf, tolerance } from '../truth/rows.js'

const reversible = unitNames.filter((unit) => unit !== 'AWG')
const pairs = reversible.flatMap((from) => reversible.filter((to) => quantityOf(from) === quantityOf(to)).map((to) => [from, to] as const))

describe('convert', () => {
  it.each(rowsOf('speeds.json', '7b'))('$id $inputs.value to $expected.value', (row) => {
    const converted = convert(input(row, 'value'), row.inputs.value?.unit as Unit, row.expected.value?.unit as Unit) ?? Number.NaN

    expect(Math.abs(converted - expected(row, 'value'))).toBeLessThanOrEqual(tolerance(row, 'value'))
  })

  // Exact by definition: NIST SP 811, appendix B.8.
  it.each([
    [1, 'in', 'mm', 25.4],
    [1, 'ft', 'm', 0.3048],
    [1, 'ft2', 'm2', 0.09290304],
    [1, 'mil', 'mm', 0.0254],
    [1, 'mph', 'km/h', 1.609344],
    [1, 'kn', 'km/h', 1.852],
    [32, 'F', 'C', 0],
    [212, 'F', 'C', 100],
    [-40, 'C', 'F', -40],
    [9, 'deltaF', 'K', 5],
    [2, 'h', 's', 7200],
    [10, 'ft/min', 'm/min', 3.048]
  ] as const)('%d %s to %s is %d', (value, from, to, result) => {
    expect(convert(value, from, to)).toBeCloseTo(result, 9)
  })

  it.each(pairs)('%s to %s and back', (from, to) => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        const back = convert(convert(value, from, to) ?? Number.NaN, to, from) ?? Number.NaN
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)) + 1e-9)
      }),
      { numRuns: 20 }
    )
  })

  it.each([
    ['C', 'K'],
    ['C', 'mm'],
    ['m/min', 'km/h'],
    ['mm2', 'AWG'],
    ['mm2', 'm2'],
    ['%', 'C']
  ] as const)('%s is no %s', (from, to) => {
    expect(convert(1, from, to)).toBeNull()
  })

  it('lists every unit once', () => {
    expect(new Set(unitNames).size).toBe(unitNames.length)
    expect(unitNames).toContain('AWG')
  })
})

describe('wire gauges', () => {
  const { awg } = readTruth('conductors.json') as { awg: { mm2: Record<string, number>; tolerance: number; source: string } }

  it.each(Object.entries(awg.mm2))('AWG %s is %d mm²', (gauge, mm2) => {
    expect(Math.abs(awgToMm2(Number(gauge)) - mm2), awg.source).toBeLessThanOrEqual(awg.tolerance)
    expect(convert(Number(gauge), 'AWG', 'mm2')).toBe(awgToMm2(Number(gauge)))
  })
})

describe('round6', () => {
  it('keeps six decimals and has no negative zero', () => {
    expect(round6(1.23456789)).toBe(1.234568)
    expect(Object.is(round6(-1e-9), 0)).toBe(true)
    expect(round6(0.1 + 0.2)).toBe(0.3)
  })
})
