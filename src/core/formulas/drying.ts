import { dryingMin, evaporationMmPerHour } from '../physics/evaporation.js'
import { formula } from './formula.js'

export const evaporation = formula({
  name: 'evaporation',
  inputs: {
    airC: { kind: 'number', unit: 'C', min: -60, max: 60 },
    rhPct: { kind: 'number', unit: '%', min: 0, max: 100, above: true },
    windKmh: { kind: 'number', unit: 'km/h', min: 0, max: 300 },
    netWm2: { kind: 'number', unit: 'W/m2', min: -1000, max: 1500 },
    groundWm2: { kind: 'number', unit: 'W/m2', min: -1000, max: 1000 }
  },
  source:
    'FAO Irrigation and Drainage Paper 56 (Allen et al. 1998), eq. 53 hourly with no surface resistance, wind at 2 m, 1013.25 hPa; negative: dew',
  run: (input) => ({ mmPerHour: evaporationMmPerHour(input) })
})

export const drying = formula({
  name: 'drying',
  inputs: {
    filmMm: { kind: 'number', unit: 'mm', min: 0, max: 100 },
    mmPerHour: { kind: 'number', unit: 'mm/h', min: -100, max: 100 }
  },
  source: 'film ÷ rate, 1 mm = 1 kg/m²; null where it never dries',
  run: ({ filmMm, mmPerHour }) => ({ min: dryingMin(filmMm, mmPerHour) })
})
