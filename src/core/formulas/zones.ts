import { enOneWind } from '../sheets/zones/en.js'
import { zoneStandardNames, zoneStandards } from '../sheets/zones/index.js'
import type { OneWind } from '../sheets/zones/zone.js'
import { formula } from './formula.js'

const size = { kind: 'number', unit: 'm', min: 0, max: 10_000, above: true } as const

/** By EN also each pair of winds alone, as the standard's figure draws them. */
export const zones = formula({
  name: 'zones',
  inputs: { standard: { kind: 'word', words: zoneStandardNames }, widthM: size, depthM: size, heightM: { ...size, max: 200 } },
  source: `${Object.values(zoneStandards)
    .map(({ source }) => source)
    .join(' · ')}; a rectangle, all winds laid over each other, the worst zone holds; the pattern is the engineer's`,
  run({ standard, ...roof }) {
    const { areasM2, widthsM } = zoneStandards[standard].zones(roof)
    const whole = { areasM2: { ...areasM2 }, widthsM: { ...widthsM } }
    if (standard !== 'en') return whole
    const { widthM, depthM, heightM } = roof
    return { ...whole, windOnWidth: flat(enOneWind(widthM, depthM, heightM)), windOnDepth: flat(enOneWind(depthM, widthM, heightM)) }
  }
})

function flat({ areasM2, ...lengths }: OneWind) {
  return { ...lengths, ...areasM2 }
}
