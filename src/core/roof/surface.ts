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

/** By sheet and kind: the same ones each time, so that what follows from their layers is reckoned once. */
const made = new WeakMap<LimitsSheet, Map<string, Surfaces>>()

/** The open substrate of a kind in the limits sheet, and the sheet lying on it; null for a kind the sheet does not know. */
export function surfacesOf(sheet: LimitsSheet, kind: string): Surfaces | null {
  const substrate = Object.hasOwn(sheet.substrates, kind) ? sheet.substrates[kind] : undefined
  if (substrate === undefined) return null
  const ofSheet = made.get(sheet) ?? new Map<string, Surfaces>()
  made.set(sheet, ofSheet)
  const surfaces = ofSheet.get(kind) ?? { substrate, sheet: sheetOn(substrate, sheet.sheet.thicknessMm) }
  ofSheet.set(kind, surfaces)
  return surfaces
}

function sheetOn({ layers }: Surface, thicknessMm: number): Surface {
  const { absorptance, emissivity, filmMaxMm, rhoKgM3, cJKgK, kWMK } = pvc
  const top: Layer = { thicknessM: thicknessMm / 1000, rhoKgM3, cJKgK, kWMK }
  return { absorptance, emissivity, filmMaxMm, layers: [top, ...layers] }
}
