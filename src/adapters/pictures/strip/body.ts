import { texts } from '../../../bot/text/index.js'
import type { StripDrawing } from '../../../core/sheets/strip-drawing.js'
import { ink, paper, straight, tag, widthOf, words } from '../svg.js'
import { placesOf } from './places.js'

const labelSize = 28
const stripFill = '#ececec'

/** Sheets end to end with their laps, the strip over the gap, and the upstand where it ends at one. */
export function bodyOf(drawing: StripDrawing): string {
  const { strip } = drawing
  const { left, right, top, bottom, gapTop, gapBottom, lapLeft, lapRight, laps, high, low } = placesOf(drawing)
  const radius = Math.min(30, (bottom - top) / 2)
  const text = texts[drawing.lang].roofPicture
  const edgeLine = (x: number) => straight(x, high - 20, x, low, ink, 3)
  return [
    // The neighbours' laps: full lines where the sheet lies on top, dashed where the strip hides them.
    ...[lapLeft, ...laps, ...(strip.edgeMm === 0 ? [] : [lapRight])].map(edgeLine),
    words((lapLeft + (laps[0] ?? lapRight)) / 2, low - 14, text.sheet, { size: labelSize, anchor: 'middle' }),
    strip.edgeMm === null ? '' : upstand(right, high, low, text.edge),
    tag('rect', {
      x: left,
      y: top,
      width: right - left,
      height: bottom - top,
      rx: radius,
      fill: stripFill,
      stroke: ink,
      'stroke-width': 5,
      'data-strip': 'yes'
    }),
    ...[lapLeft, ...laps, ...(strip.edgeMm === 0 ? [] : [lapRight])].map((x) => hidden(x, top, x, bottom)),
    strip.gapMm > 0 ? gapOf(left, right, gapTop, gapBottom) : hidden(left, (gapTop + gapBottom) / 2, right, (gapTop + gapBottom) / 2),
    plain((left + right) / 2, gapTop - 12, text.gap)
  ].join('')
}

/** Words on a plate in the strip's own fill: laps run behind them. */
function plain(x: number, y: number, said: string): string {
  const wide = widthOf(said, labelSize)
  const ground = tag('rect', { x: x - wide / 2, y: y - labelSize + 2, width: wide, height: labelSize + 4, fill: stripFill })
  return `${ground}${words(x, y, said, { size: labelSize, anchor: 'middle' })}`
}

function hidden(x1: number, y1: number, x2: number, y2: number): string {
  return tag('line', { x1, y1, x2, y2, stroke: ink, 'stroke-width': 2, 'stroke-dasharray': '12 8' })
}

/** The gap under the strip: both ends of sheets dashed, white between. */
function gapOf(left: number, right: number, top: number, bottom: number): string {
  const ground = tag('rect', { x: left + 6, y: top, width: right - left - 12, height: bottom - top, fill: paper, 'data-gap': 'yes' })
  return [ground, hidden(left, top, right, top), hidden(left, bottom, right, bottom)].join('')
}

function upstand(x: number, high: number, low: number, said: string): string {
  const hatch = Array.from({ length: Math.floor((low - high + 20) / 24) }, (_, index) =>
    straight(x, high - 20 + index * 24 + 24, x + 20, high - 20 + index * 24, ink, 2)
  )
  return [straight(x, high - 20, x, low, ink, 7), ...hatch, words(x + 30, low - 14, said, { size: labelSize })].join('')
}
