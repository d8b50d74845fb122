import { convectionWm2K } from '../physics/convection.js'
import { sky as skyState } from '../physics/sky.js'
import { surfaceC } from '../physics/surface.js'
import { formula } from './formula.js'

const airC = { kind: 'number', unit: 'C', min: -60, max: 60 } as const
const dewPointC = { kind: 'number', unit: 'C', min: -60, max: 40 } as const
const windKmh = { kind: 'number', unit: 'km/h', min: 0, max: 300 } as const
const cloudPct = { kind: 'number', unit: '%', min: 0, max: 100 } as const
const share = { kind: 'number', unit: '', min: 0, max: 1 } as const

export const sky = formula({
  name: 'sky',
  inputs: { airC, dewPointC, cloudPct },
  source:
    'Berdahl & Martin 1984 (coefficients from memory) × cloud factor of Clark & Allen 1978 and Walton 1983 (EnergyPlus Engineering Reference), 1 at most; dew point up to the air’s',
  run: (input) => ({ ...skyState(input.airC, input.dewPointC, input.cloudPct) })
})

export const convection = formula({
  name: 'convection',
  inputs: { windKmh },
  source: 'McAdams 1954, h = 5.7 + 3.8·V, V m/s over the roof; made for up to 18 km/h, the line continued beyond',
  run: (input) => ({ hWm2K: convectionWm2K(input.windKmh) })
})

export const surface = formula({
  name: 'surface',
  inputs: {
    airC,
    dewPointC,
    windKmh,
    sunWm2: { kind: 'number', unit: 'W/m2', min: 0, max: 1500 },
    cloudPct,
    absorptance: share,
    emissivity: share
  },
  source:
    'steady balance of sun, long-wave and convection, nothing from below (EnergyPlus Engineering Reference); sky and convection as those formulas',
  run: (input) => ({ surfaceC: surfaceC(input) })
})
