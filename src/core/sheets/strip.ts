import { above, within } from '../physics/range.js'
import { round6 } from '../units.js'

export interface StripInput {
  readonly widthM: number
  /** Sheets side by side under one strip. */
  readonly sheets: number
  readonly gapMm: number
  /** Off the centre of the joint, to either side. */
  readonly offMm: number
  /** Run from the last sheet to the edge or upstand; null for inner sheets. */
  readonly edgeMm: number | null
  readonly lapMm: number
  readonly pastLapMm: number
  readonly stripWidthMm: number
  readonly cornerRadiusMm: number
}

export interface StripSize {
  readonly lengthMm: number
  readonly widthMm: number
  /** Width left to weld on the worse side of the gap; below 0 when the joint is not covered. */
  readonly landMm: number
  readonly cornerRadiusMm: number
  readonly weldPerimeterMm: number
  readonly robotMm: number
  readonly handMm: number
}

const longestMm = 1e6

function refuseImpossible(strip: StripInput): void {
  above('widthM', strip.widthM, 0, longestMm / 1000)
  within('sheets', Number.isInteger(strip.sheets) ? strip.sheets : Number.NaN, 1, 1000)
  within('gapMm', strip.gapMm, -longestMm, longestMm)
  within('offMm', strip.offMm, -longestMm, longestMm)
  within('edgeMm', strip.edgeMm ?? 0, 0, longestMm)
  within('lapMm', strip.lapMm, 0, strip.widthM * 1000)
  within('pastLapMm', strip.pastLapMm, 0, longestMm)
  above('stripWidthMm', strip.stripWidthMm, 0, longestMm)
}

/**
 * Cover strip over an end joint. Length = N·W − (N−1)·lap + 2·past, at an edge + past + run; land = (width − gap)/2 − |off|;
 * perimeter with rounded corners = 2(l + w) − (8 − 2π)r, of which the robot reaches 2(l − 2r). Common practice, no source;
 * the perimeter is geometry. Lengths ≥ 0 (a gap below 0 is an
 * overlap), 1…1000 sheets, the radius at most half the strip's width and length; else RangeError.
 */
export function stripSize(strip: StripInput): StripSize {
  const { widthM, sheets, gapMm, offMm, edgeMm, lapMm, pastLapMm, stripWidthMm, cornerRadiusMm } = strip
  refuseImpossible(strip)
  const ends = edgeMm === null ? 2 * pastLapMm : pastLapMm + edgeMm
  const lengthMm = sheets * widthM * 1000 - (sheets - 1) * lapMm + ends
  within('cornerRadiusMm', cornerRadiusMm, 0, Math.min(stripWidthMm, lengthMm) / 2)
  const weldPerimeterMm = 2 * (lengthMm + stripWidthMm) - (8 - 2 * Math.PI) * cornerRadiusMm
  const robotMm = 2 * (lengthMm - 2 * cornerRadiusMm)
  return {
    lengthMm,
    widthMm: stripWidthMm,
    landMm: (stripWidthMm - gapMm) / 2 - Math.abs(offMm),
    cornerRadiusMm,
    weldPerimeterMm,
    robotMm,
    handMm: weldPerimeterMm - robotMm
  }
}

/** Strips of one length (> 0 mm) that a roll of so many metres (≥ 0) gives. */
export function stripsFromRoll(rollM: number, lengthMm: number): number {
  within('rollM', rollM, 0, longestMm)
  above('lengthMm', lengthMm, 0, 1e9)
  return Math.floor(round6((rollM * 1000) / lengthMm))
}
