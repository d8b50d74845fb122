import { describe, expect, it } from 'vitest'
import { condensation } from '../../../src/core/gather/air.js'
import { frostPointC } from '../../../src/core/physics/air.js'

describe('where water comes out on a surface', () => {
  it.each([20, 0.5, 0])('is the dew point at %d °C', (dewC) => {
    expect(condensation(dewC)).toBe(dewC)
  })

  it.each([-0.1, -5, -40, -89])('is the frost point for a dew point of %d °C', (dewC) => {
    expect(condensation(dewC)).toBeCloseTo(frostPointC(dewC, 100) ?? Number.NaN, 9)
  })

  // Found by generated messages: `/weld rh 1` on a cold day had a dew point of −105 °C and ended in a failure inside.
  it.each([-90.8, -105.2, -117.6, -150])('is far below any roof for a dew point of %d °C', (dewC) => {
    expect(condensation(dewC)).toBeLessThan(-80)
    expect(condensation(dewC)).toBeGreaterThan(-111)
  })
})
