import { describe, expect, it } from 'vitest'
import { alertLimitC, exposureLimitC, metabolicW } from '../../../src/core/physics/niosh.js'
import { expected, input, rowsOf, tolerance } from '../../truth/rows.js'

const rows = rowsOf('wbgt.json', '2h')

describe('2h: NIOSH limits', () => {
  it.each(rows.filter((row) => 'RAL' in row.expected))('$id $inputs.metabolicRate.value W', (row) => {
    const watts = input(row, 'metabolicRate')
    expect(Math.abs(alertLimitC(watts) - expected(row, 'RAL'))).toBeLessThanOrEqual(tolerance(row, 'RAL'))
    expect(Math.abs(exposureLimitC(watts) - expected(row, 'REL'))).toBeLessThanOrEqual(tolerance(row, 'REL'))
  })

  it.each(rows.filter((row) => 'class' in row.inputs))('$id $inputs.class.value, from memory', (row) => {
    const classes: Readonly<Record<string, number>> = metabolicW
    const name = String(row.inputs.class?.value).replace('very heavy', 'veryHeavy')
    expect(classes[name]).toBe(expected(row, 'metabolicRate'))
  })

  it('has more room for people used to heat, and less the harder the work', () => {
    for (let watts = 115; watts <= 585; watts += 10) {
      expect(exposureLimitC(watts)).toBeGreaterThan(alertLimitC(watts))
      expect(alertLimitC(watts + 10)).toBeLessThan(alertLimitC(watts))
    }
  })

  it.each([Number.NaN, 99, 601, 0])('refuses %d W', (watts) => {
    expect(() => alertLimitC(watts)).toThrow(RangeError)
    expect(() => exposureLimitC(watts)).toThrow(RangeError)
  })
})
