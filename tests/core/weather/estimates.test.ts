import { describe, expect, it } from 'vitest'
import { dewPointC } from '../../../src/core/physics/air.js'
import { dewSpreadK } from '../../../src/core/weather/estimates.js'

const spread = { airK: 1.5, rhPct: 6, windKmh: 6, gustKmh: 9, gustEstimatedKmh: 12 }

/** What the spread is to first order: slopes of our own dew point by differences far smaller than a spread. */
function byDifferences(airC: number, rhPct: number): number {
  const perK = (dewPointC(airC + 1e-4, rhPct) - dewPointC(airC - 1e-4, rhPct)) / 2e-4
  const perPct = (dewPointC(airC, rhPct) - dewPointC(airC, rhPct - 1e-4)) / 1e-4
  return Math.hypot(perK * spread.airK, perPct * spread.rhPct)
}

describe('the spread of a dew point', () => {
  const airs = [-25, -12, -3, 0.5, 8, 19, 33, 48]
  const humidities = [4, 20, 45, 70, 90, 99]
  it.each(airs.flatMap((airC) => humidities.map((rhPct) => [airC, rhPct] as const)))(
    'in air of %d °C at %d %% is what its slopes give',
    (airC, rhPct) => {
      const dewC = dewPointC(airC, rhPct)
      // Between 0 and −2 °C two formulas are mixed, whose mixing the slopes leave out.
      const tolerance = dewC < 0 && dewC > -2 ? 0.04 : 0.01
      expect(Math.abs(dewSpreadK({ airC, rhPct, dewC }, spread) / byDifferences(airC, rhPct) - 1)).toBeLessThan(tolerance)
    }
  )

  it('is that of the air where the dew point is not known', () => {
    expect(dewSpreadK({ airC: 20, rhPct: null, dewC: null }, spread)).toBe(1.5)
  })
})
