import type { StripDrawing } from '../../core/sheets/strip-drawing.js'
import { texts } from '../text/index.js'
import { drawingAmounts } from './roof-alt.js'

/** Everything that the drawing of a strip shows, in words. */
export function stripAlt(drawing: StripDrawing): string {
  const { strip, size, minWidthMm, lang } = drawing
  const { roofPicture: words, frame } = texts[lang]
  const { mm } = drawingAmounts(drawing)
  const named = (name: string, valueMm: number) => `${name}${frame.colon}${mm(valueMm)}`
  const parts = [
    words.size(mm(size.lengthMm), mm(size.widthMm)),
    named(words.gap, strip.gapMm),
    ...(strip.offMm === 0 ? [] : [named(words.off, Math.abs(strip.offMm))]),
    `${named(words.land, size.landMm)} (${words.least} ${mm(minWidthMm)})`,
    named(words.pastLap, strip.pastLapMm),
    ...(strip.edgeMm === null ? [] : [named(words.toEdge, strip.edgeMm)]),
    ...(strip.sheets > 1 ? [named(words.lap, strip.lapMm)] : []),
    `${words.radius} ${mm(size.cornerRadiusMm)}`,
    named(words.weld, size.weldPerimeterMm),
    words.notToScale
  ]
  return `${words.stripTitle(strip.sheets)}${frame.colon}${parts.join(', ')}.`
}
