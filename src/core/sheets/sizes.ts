import type { LimitsSheet } from '../limits/sheet.js'
import type { SheetSizes } from './layout.js'

export type SizesProblem = { readonly what: 'lap-wide' | 'roll-short' | 'patch-layers' | 'gap-wide'; readonly min: number; readonly max: number }

/** A joint without a gap is laid out as one of this, mm, so that its two sheets stay two. */
const leastGapMm = 0.01

/** Sizes of a limits sheet in mm. */
export function sizesOf({ sheet, strip }: Pick<LimitsSheet, 'sheet' | 'strip'>): SheetSizes {
  return {
    widthMm: sheet.widthM * 1000,
    rollMm: sheet.rollM * 1000,
    lapMm: sheet.lapMm,
    endGapMm: Math.max(leastGapMm, sheet.endGapMm),
    stripWidthMm: strip.widthMm,
    pastLapMm: strip.pastLapMm,
    cornerRadiusMm: strip.cornerRadiusMm,
    patchFromLayers: sheet.patchFromLayers
  }
}

/**
 * What sizes cannot be laid out: a lap of half the sheet or more (three sheets would lie over each other), a roll shorter than
 * 1 m, a gap as wide as its strip, patches from fewer than three layers (every lap would be one).
 */
export function sizesProblem({ widthMm, rollMm, lapMm, endGapMm, stripWidthMm, patchFromLayers }: SheetSizes): SizesProblem | null {
  const mostLapMm = widthMm / 2 - 1
  if (!(lapMm >= 0 && lapMm <= mostLapMm)) return { what: 'lap-wide', min: 0, max: Math.max(0, mostLapMm) }
  if (!(rollMm >= 1000)) return { what: 'roll-short', min: 1000, max: 1e6 }
  if (!(endGapMm < stripWidthMm)) return { what: 'gap-wide', min: 0, max: stripWidthMm }
  return patchFromLayers >= 3 ? null : { what: 'patch-layers', min: 3, max: 20 }
}
