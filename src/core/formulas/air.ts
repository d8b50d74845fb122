import { airState, standardPressureHpa } from '../physics/air.js'
import { heatIndexC } from '../physics/heat-index.js'
import { windChillC } from '../physics/wind-chill.js'
import { formula } from './formula.js'

const airC = { kind: 'number', unit: 'C', min: -60, max: 60 } as const
const rhPct = { kind: 'number', unit: '%', min: 0, max: 100, above: true } as const

export const air = formula({
  name: 'air',
  inputs: { airC, rhPct, pressureHpa: { kind: 'number', unit: 'hPa', min: 500, max: 1100, default: standardPressureHpa } },
  source:
    'ASHRAE Handbook—Fundamentals 2017, ch. 1 (Hyland & Wexler); over water below 0 °C WMO-No. 8, annex 4.B (Sonntag 1990); humidity and dew point over water',
  run: (input) => ({ ...airState(input) })
})

export const heatIndex = formula({
  name: 'heat-index',
  inputs: { airC, rhPct },
  source: 'US National Weather Service, "The Heat Index Equation" (Rothfusz 1990, SR 90-23), full procedure; shade',
  run: (input) => ({ heatIndexC: heatIndexC(input.airC, input.rhPct) })
})

export const windChill = formula({
  name: 'wind-chill',
  inputs: { airC, windKmh: { kind: 'number', unit: 'km/h', min: 0, max: 300 } },
  source: 'US National Weather Service and Environment Canada, index of 2001; null above 10 °C and at or below 4.8 km/h',
  run: ({ airC, windKmh }) => ({ windChillC: windChillC(airC, windKmh) })
})
