import type { Layer, LimitsSheet, SubstrateProperties } from '../limits/sheet.js'

/** A surface of a roof: what the sun and the sky see, the water it can hold, and what lies below it, from the top down. */
export type Surface = SubstrateProperties

/** Both surfaces that work is done on: what is sprayed, and what is welded. */
export interface Surfaces {
  readonly substrate: Surface
  readonly sheet: Surface
}

/** PVC, white or light grey: from memory. A dark one gets hotter by day than this. */
const pvc = { absorptance: 0.4, emissivity: 0.9, filmMaxMm: 0.2, rhoKgM3: 1300, cJKgK: 1000, kWMK: 0.17 } as const

/** The open substrate of a kind in the limits sheet, and the sheet lying on it; null for a kind the sheet does not know. */
export function surfacesOf(sheet: LimitsSheet, kind: string): Surfaces | null {
  const substrate = Object.hasOwn(sheet.substrates, kind) ? sheet.substrates[kind] : undefined
  if (substrate === undefined) return null
  const { absorptance, emissivity, filmMaxMm, rhoKgM3, cJKgK, kWMK } = pvc
  const top: Layer = { thicknessM: sheet.sheet.thicknessMm / 1000, rhoKgM3, cJKgK, kWMK }
  return { substrate, sheet: { absorptance, emissivity, filmMaxMm, layers: [top, ...substrate.layers] } }
}
