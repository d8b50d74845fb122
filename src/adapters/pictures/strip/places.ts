import type { StripDrawing } from '../../../core/sheets/strip-drawing.js'

/** Where the parts of a strip stand on its drawing, px. */
export interface Places {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  readonly gapTop: number
  readonly gapBottom: number
  /** Ends of the sheets that the strip passes: their outer laps. */
  readonly lapLeft: number
  readonly lapRight: number
  /** Laps between sheets. */
  readonly laps: readonly number[]
  /** Ends of what is shown of the sheets. */
  readonly high: number
  readonly low: number
}

const box = { left: 70, right: 750, top: 270, bottom: 570, high: 230, low: 670 }
/** Past a lap, and to an edge, in px whatever their length is. */
const past = 165
const mostLaps = 12

/** A sketch: lengths keep their order, and the gap and its place across the strip their share, but no scale. */
export function placesOf({ strip, size }: StripDrawing): Places {
  const { left, right, top, bottom } = box
  const share = (mm: number) => (mm / size.widthMm) * (bottom - top)
  const gap = strip.gapMm <= 0 ? 0 : Math.max(8, Math.min(share(strip.gapMm), bottom - top))
  const middle = Math.min(bottom, Math.max(top, (top + bottom) / 2 + share(strip.offMm)))
  const [lapLeft, lapRight] = [left + past, right - (strip.edgeMm === 0 ? 0 : past)]
  const shown = Math.min(strip.sheets, mostLaps + 1)
  const laps = Array.from({ length: shown - 1 }, (_, index) => lapLeft + ((index + 1) * (lapRight - lapLeft)) / shown)
  return { ...box, gapTop: Math.max(top, middle - gap / 2), gapBottom: Math.min(bottom, middle + gap / 2), lapLeft, lapRight, laps }
}
