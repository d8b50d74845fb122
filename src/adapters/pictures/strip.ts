import { texts } from '../../bot/text/index.js'
import { drawingAmounts } from '../../bot/views/roof-alt.js'
import { stripAlt } from '../../bot/views/strip-alt.js'
import type { StripDrawing } from '../../core/sheets/strip-drawing.js'
import { dimension } from './roof/beside.js'
import { bodyOf } from './strip/body.js'
import { placesOf } from './strip/places.js'
import { escapeXml, fitted, paper, straight, tag, words } from './svg.js'

const width = 1000
const height = 1000
const margin = 24
/** A dimension line needs so much room for its words. */
const leastSpan = 90
const font = { title: 38, label: 30 }

/** One cover strip over its joint, with its dimensions; not to scale, so that a gap of 6 mm is seen beside 2 m. SVG. */
export function drawStrip(drawing: StripDrawing): string {
  const text = texts[drawing.lang].roofPicture
  const title = fitted(text.stripTitle(drawing.strip.sheets), font.title, width)
  const body = [
    tag('title', {}, escapeXml(stripAlt(drawing))),
    tag('rect', { width, height, fill: paper }),
    words(margin, 50, title, { size: font.title, bold: true }),
    words(margin, 98, text.notToScale, { size: font.label }),
    bodyOf(drawing),
    dimensionsOf(drawing),
    ...notes(drawing).map((line, index) => words(margin, 806 + index * 46, fitted(line, font.label, width), { size: font.label }))
  ]
  const size = { width, height, viewBox: `0 0 ${width} ${height}` }
  return tag('svg', { xmlns: 'http://www.w3.org/2000/svg', ...size, lang: drawing.lang }, body)
}

/** Length above, width and both lands to the right, what lies past the laps below. */
function dimensionsOf(drawing: StripDrawing): string {
  const { strip, size } = drawing
  const { mm } = drawingAmounts(drawing)
  const { left, right, top, bottom, gapTop, gapBottom, lapLeft, lapRight, low } = placesOf(drawing)
  const reach = (x: number, y1: number, y2: number) => straight(x, y1, x, y2, '#6a6a6a', 2)
  const across = (y: number, far: number) => straight(right + 8, y, right + far, y, '#6a6a6a', 2)
  const lands = landsOf(drawing)
  const [above, below] = [top - 84, low + 56]
  const ends = [strip.pastLapMm, strip.edgeMm ?? strip.pastLapMm] as const
  return [
    ...[left, right].map((x) => reach(x, above - 14, top - 6)),
    dimension(font, [left, above], [right, above], mm(size.lengthMm)),
    ...[top, bottom].map((y) => across(y, 190)),
    ...(strip.gapMm > 0 ? [gapTop, gapBottom].map((y) => across(y, 104)) : []),
    dimension(font, [right + 180, bottom], [right + 180, top], mm(size.widthMm)),
    ...(gapTop - top > leastSpan ? [dimension(font, [right + 94, gapTop], [right + 94, top], mm(lands.upper))] : []),
    ...(bottom - gapBottom > leastSpan ? [dimension(font, [right + 94, bottom], [right + 94, gapBottom], mm(lands.lower))] : []),
    ...[left, right].map((x) => reach(x, bottom + 6, below + 14)),
    ...[lapLeft, lapRight].map((x) => reach(x, low + 8, below + 14)),
    dimension(font, [left, below], [lapLeft, below], mm(ends[0])),
    dimension(font, [lapLeft, below], [lapRight, below], mm(size.lengthMm - ends[0] - ends[1])),
    ...(ends[1] > 0 ? [dimension(font, [lapRight, below], [right, below], mm(ends[1]))] : [])
  ].join('')
}

/** What the gap leaves of the strip on each side of it. */
function landsOf({ strip, size }: StripDrawing): { readonly upper: number; readonly lower: number } {
  const off = strip.offMm
  const even = (size.widthMm - strip.gapMm) / 2
  return { upper: even + off, lower: even - off }
}

function notes(drawing: StripDrawing): readonly string[] {
  const { strip, size, minWidthMm, lang } = drawing
  const { roofPicture: text, frame } = texts[lang]
  const { mm } = drawingAmounts(drawing)
  const off = strip.offMm === 0 ? [] : [`${text.off} ${mm(Math.abs(strip.offMm))}`]
  const lap = strip.sheets > 1 ? [`${text.lap} ${mm(strip.lapMm)}`] : []
  return [
    [`${text.gap} ${mm(strip.gapMm)}`, ...off].join(' · '),
    `${text.land}${frame.colon}${mm(size.landMm)} (${text.least} ${mm(minWidthMm)})`,
    [...lap, `${text.radius} ${mm(size.cornerRadiusMm)}`].join(' · '),
    `${text.weld}${frame.colon}${mm(size.weldPerimeterMm)}`
  ]
}
