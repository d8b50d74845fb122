import { above, within } from './range.js'

/**
 * Heat index of the US National Weather Service, °C, for shade and light wind: the simple formula averaged with the
 * temperature; where that reaches 80 °F the Rothfusz regression (1990, SR 90-23) with both adjustments (± 1.3 °F).
 * Source: NWS Weather Prediction Center, "The Heat Index Equation". Air −90…90 °C, humidity > 0…100 %, else
 * RangeError; above 52 °C or so at high humidity the regression is continued beyond the data it was fitted to.
 */
export function heatIndexC(airC: number, rhPct: number): number {
  within('airC', airC, -90, 90)
  above('rhPct', rhPct, 0, 100)
  const airF = airC * 1.8 + 32
  const simpleF = (0.5 * (airF + 61 + (airF - 68) * 1.2 + rhPct * 0.094) + airF) / 2
  const indexF = simpleF < 80 ? simpleF : rothfuszF(airF, rhPct) + adjustmentF(airF, rhPct)
  return (indexF - 32) / 1.8
}

function rothfuszF(t: number, r: number): number {
  return (
    -42.379 +
    2.04901523 * t +
    10.14333127 * r -
    0.22475541 * t * r -
    6.83783e-3 * t ** 2 -
    5.481717e-2 * r ** 2 +
    1.22874e-3 * t ** 2 * r +
    8.5282e-4 * t * r ** 2 -
    1.99e-6 * t ** 2 * r ** 2
  )
}

function adjustmentF(t: number, r: number): number {
  if (r < 13 && t >= 80 && t <= 112) return -((13 - r) / 4) * Math.sqrt((17 - Math.abs(t - 95)) / 17)
  if (r > 85 && t >= 80 && t <= 87) return ((r - 85) / 10) * ((87 - t) / 5)
  return 0
}
