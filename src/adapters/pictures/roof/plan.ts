import { boxOfRegion, type Region } from '../../../core/sheets/polygon.js'
import type { RoofDrawing } from '../../../core/sheets/roof-drawing.js'
import { zoneBorders } from '../../../core/sheets/zones/borders.js'
import { ink, paper, straight, tag } from '../svg.js'
import { at, type Frame, outlinePath, pathOf } from './frame.js'

const stripLeastPx = 9

export const planHatches: readonly string[] = [
  tag('pattern', { id: 'strip', width: 7, height: 7, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' }, [
    tag('rect', { width: 7, height: 7, fill: paper }),
    tag('rect', { width: 3, height: 7, fill: ink })
  ])
]

/** Sheets by their visible edges: side laps thin, the ends of sheets under their strips, the roof's edge strong, openings crossed out. */
export function planOf(frame: Frame, drawing: RoofDrawing): string {
  const { layout } = drawing
  const { seams, strips, handPress } = layout
  const arm = Math.min(7, Math.max(3, 100 * frame.pxPerMm))
  return [
    tag('path', { d: outlinePath(frame, layout), fill: paper, 'fill-rule': 'evenodd' }),
    ...seams.map(({ from, to }) => straight(...at(frame, from), ...at(frame, to), '#5a5a5a', 2)),
    ...bordersOf(frame, drawing),
    ...strips.map(({ region, number }) => stripOf(frame, region, number)),
    ...handPress.map(({ at: place }) => cross(...at(frame, place), arm)),
    tag('path', { d: outlinePath(frame, layout), fill: 'none', stroke: ink, 'stroke-width': 6, 'stroke-linejoin': 'miter' }),
    ...layout.outline.holes.map((hole) => openingOf(frame, hole))
  ].join('')
}

/** A strip is narrow on a whole roof: at least so many pixels wide, so that it is seen. */
function stripOf(frame: Frame, region: Region, number: number): string {
  const { minX, minY, maxX, maxY } = boxOfRegion(region)
  const [left, top, right, bottom] = [frame.x(minX), frame.y(maxY), frame.x(maxX), frame.y(minY)]
  const [wide, high] = [Math.max(stripLeastPx, right - left), Math.max(stripLeastPx, bottom - top)]
  const box = { x: (left + right - wide) / 2, y: (top + bottom - high) / 2, width: wide, height: high }
  return tag('rect', { ...box, fill: 'url(#strip)', stroke: ink, 'stroke-width': 2, 'data-strip': number })
}

/** Plain drafting: an opening is an outline with its diagonals. */
function openingOf(frame: Frame, hole: Region[number]['outer']): string {
  const { minX, minY, maxX, maxY } = boxOfRegion([{ outer: hole, holes: [] }])
  const clear = tag('path', { d: pathOf(frame, [hole]), fill: paper, stroke: ink, 'stroke-width': 4, 'data-opening': 'yes' })
  if (hole.length !== 4) return clear
  const [left, top, right, bottom] = [frame.x(minX), frame.y(maxY), frame.x(maxX), frame.y(minY)]
  return [clear, straight(left, top, right, bottom, ink, 2), straight(left, bottom, right, top, ink, 2)].join('')
}

export function cross(x: number, y: number, arm: number): string {
  return `${straight(x - arm, y - arm, x + arm, y + arm, ink, 2.5)}${straight(x - arm, y + arm, x + arm, y - arm, ink, 2.5)}`
}

/** Borders of wind zones, dashed as centre lines are. */
function bordersOf(frame: Frame, { zones, layout }: RoofDrawing): readonly string[] {
  if (zones?.kind !== 'zones') return []
  const [originX, originY] = originOf(layout)
  const on = ([x, y]: readonly [number, number]) => at(frame, [originX + x * 1000, originY + y * 1000])
  return zoneBorders(zones.parts).map(({ from, to }) => {
    const [[x1, y1], [x2, y2]] = [on(from), on(to)]
    return tag('line', { x1, y1, x2, y2, stroke: '#5b1a78', 'stroke-width': 3, 'stroke-dasharray': '18 6 4 6', 'data-zone-border': 'yes' })
  })
}

/** The corner that zones count from. */
export function originOf({ outline }: RoofDrawing['layout']): readonly [number, number] {
  const { minX, minY } = boxOfRegion([outline])
  return [minX, minY]
}
