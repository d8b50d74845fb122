import { standardPressureHpa } from '../physics/air.js'
import { wbgt as wbgtState } from '../physics/wbgt.js'
import { formula } from './formula.js'

export const wbgt = formula({
  name: 'wbgt',
  inputs: {
    airC: { kind: 'number', unit: 'C', min: -60, max: 60 },
    rhPct: { kind: 'number', unit: '%', min: 0, max: 100, above: true },
    pressureHpa: { kind: 'number', unit: 'hPa', min: 500, max: 1100, default: standardPressureHpa },
    windKmh: { kind: 'number', unit: 'km/h', min: 0, max: 300 },
    sunWm2: { kind: 'number', unit: 'W/m2', min: 0, max: 1500 },
    directFraction: { kind: 'number', unit: '', min: 0, max: 1 },
    cosZenith: { kind: 'number', unit: '', min: -1, max: 1 }
  },
  source:
    'Liljegren et al. 2008, J. Occup. Environ. Hyg. 5:645–655; wind at 10 m, at least 2.2 km/h, brought to 2 m over built-up land; direct share 0.9 at most, none with the sun below 0.5°',
  run: (input) => ({ ...wbgtState(input) })
})
