import { awgToMm2 } from '../units.js'
import { individualsChart } from '../welds/chart.js'
import { voidRate } from '../welds/rate.js'
import { voltageDrop } from '../welds/voltage.js'
import { formula, refuse } from './formula.js'

export const rate = formula({
  name: 'rate',
  inputs: {
    voids: { kind: 'number', unit: '', min: 0, max: 100_000, whole: true },
    metres: { kind: 'number', unit: 'm', min: 0, max: 1e9 }
  },
  source: 'exact one-sided 90 % bound of a Poisson count (Garwood 1936); null without metres',
  run: ({ voids, metres }) => ({ ...voidRate(voids, metres) })
})

export const chart = formula({
  name: 'chart',
  inputs: { widthsMm: { kind: 'numbers', unit: 'mm', min: 0, max: 1000 } },
  source: 'NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, individuals chart; sigma null for one width',
  run: ({ widthsMm }) => ({ ...individualsChart(widthsMm) })
})

export const voltage = formula({
  name: 'voltage',
  inputs: {
    volts: { kind: 'number', unit: 'V', min: 10, max: 1000 },
    watts: { kind: 'number', unit: 'W', min: 0, max: 50_000, above: true },
    leadM: { kind: 'number', unit: 'm', min: 0, max: 1000 },
    areaMm2: { kind: 'number', unit: 'mm2', min: 0.05, max: 120, default: null },
    awg: { kind: 'number', unit: 'AWG', min: 0, max: 30, whole: true, default: null }
  },
  source:
    'V = U·R/(R + 2·L·r), R = U²/P; r by IEC 60228 class 5, plain copper, 20 °C; sections it does not list and AWG (ASTM B258) with 0.0178 Ω·mm²/m, from memory; heatPct is what is left',
  run({ volts, watts, leadM, areaMm2, awg }) {
    if (areaMm2 !== null && awg !== null) return refuse('inconsistent', 'awg', 'areaMm2 or awg, not both')
    if (areaMm2 === null && awg === null) return refuse('missing', 'areaMm2', 'areaMm2 or awg is needed')
    return { ...voltageDrop({ volts, watts, leadM, areaMm2: areaMm2 ?? awgToMm2(awg ?? 0) }) }
  }
})
