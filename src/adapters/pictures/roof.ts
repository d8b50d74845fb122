import { texts } from '../../bot/text/index.js'
import { drawingAmounts, roofAlt, roofLine, zoneWords } from '../../bot/views/roof-alt.js'
import type { RoofDrawing } from '../../core/sheets/roof-drawing.js'
import { courseNumbers, edgeLengths, northArrow, overall, scaleBar } from './roof/beside.js'
import { type Frame, frameOf } from './roof/frame.js'
import { legendOf } from './roof/legend.js'
import { marksOf } from './roof/marks.js'
import { planHatches, planOf } from './roof/plan.js'
import { escapeXml, fitted, ink, paper, tag, words } from './svg.js'

const margin = 24
/** Round lengths of half a scale bar: metres, or feet where a person works in them. */
const bars = {
  metric: [500, 1000, 2500, 5000, 10_000, 25_000, 50_000, 100_000],
  us: [1, 2.5, 5, 10, 25, 50, 100, 250].map((feet) => feet * 304.8)
} as const

/** The drawing of a roof: courses, cuts, joints, strips, patches, zones, openings and open voids, at a scale, north up. SVG. */
export function drawRoof(drawing: RoofDrawing): string {
  const text = texts[drawing.lang]
  const { layout } = drawing
  const frame = frameOf(layout, drawing.use, drawing.invented ? 40 : 0)
  const amounts = drawingAmounts(drawing)
  const { placed, patchesLeft } = marksOf(frame, drawing, amounts.m)
  const foot = frame.bottom + (layout.along === 'y' ? frame.small * 2.1 : 30)
  const cuts = drawing.use === 'paper' ? [text.roofPicture.cuts] : []
  const more = [...cuts, ...(patchesLeft === 0 ? [] : [text.roofPicture.notNumbered(patchesLeft)]), ...zoneWords(drawing, text)]
  const legend = legendOf(frame, foot + 70, drawing, text.roofPicture, more)
  const height = Math.ceil(legend.bottom + 20)
  const body = [
    tag('title', {}, escapeXml(roofAlt(drawing))),
    tag('defs', {}, planHatches),
    tag('rect', { width: frame.width, height, fill: paper }),
    heading(frame, drawing, roofLine(drawing, text)),
    planOf(frame, drawing),
    ...placed.svg,
    overall(frame, layout, amounts.m),
    edgeLengths(frame, layout, amounts.m),
    courseNumbers(frame, layout),
    northArrow(frame.width - 60, 130 + (drawing.invented ? 40 : 0), frame.label, text.roofPicture.north),
    lowSide(frame, drawing, text.roofPicture.lowSide, foot),
    scaleBar(frame, foot + 36, bars[drawing.units], amounts.m),
    legend.svg
  ]
  const size = { width: frame.width, height, viewBox: `0 0 ${frame.width} ${height}` }
  return tag('svg', { xmlns: 'http://www.w3.org/2000/svg', ...size, lang: drawing.lang }, body)
}

/** Name and size; below them, in a frame, that the site is invented. */
function heading(frame: Frame, { site, lang, invented }: RoofDrawing, line: string): string {
  const { roofPicture, frame: frameWords } = texts[lang]
  const room = frame.width - 2 * margin
  const said = [
    words(margin, 46, fitted(roofPicture.title(site), frame.title, room), { size: frame.title, bold: true }),
    words(margin, 92, fitted(line, frame.label, room), { size: frame.label })
  ]
  if (!invented) return said.join('')
  const box = tag('rect', { x: margin, y: 106, width: 300, height: 40, fill: paper, stroke: ink, 'stroke-width': 3 })
  return [...said, box, words(margin + 150, 135, frameWords.invented, { size: frame.label, anchor: 'middle', bold: true })].join('')
}

/** Where the first course lies: laps are laid from there, so that they shed water. */
function lowSide(frame: Frame, { layout }: RoofDrawing, said: string, foot: number): string {
  if (layout.along === 'x') return words(frame.right, foot + 46, `▽ ${said}`, { size: frame.small, anchor: 'end' })
  const [x, y] = [frame.left - 20, (frame.top + frame.bottom) / 2]
  return tag('g', { transform: `rotate(-90 ${x} ${y})` }, words(x, y, `△ ${said}`, { size: frame.small, anchor: 'middle' }))
}
