import type { Layout } from '../../../core/sheets/layout.js'
import { boxOf, boxOfRegion, type Point } from '../../../core/sheets/polygon.js'
import { ink, number, paper, straight, tag, widthOf, words } from '../svg.js'
import type { Frame } from './frame.js'

/** A dimension line with slanted ticks, its words over it; upright ones read from the right. */
export function dimension(frame: Pick<Frame, 'label'>, from: readonly [number, number], to: readonly [number, number], text: string): string {
  const [[x1, y1], [x2, y2]] = [from, to]
  const upright = x1 === x2
  const [x, y] = [(x1 + x2) / 2, (y1 + y2) / 2]
  const tick = (tx: number, ty: number) => straight(tx - 9, ty + 9, tx + 9, ty - 9, ink, 3)
  const said = words(x, y - 10, text, { size: frame.label, anchor: 'middle' })
  return [straight(x1, y1, x2, y2, ink, 2), tick(x1, y1), tick(x2, y2), upright ? tag('g', { transform: `rotate(-90 ${x} ${y})` }, said) : said].join(
    ''
  )
}

/** Over all, above and to the right of the plan; farther out where edges have lengths of their own. */
export function overall(frame: Frame, { outline }: Layout, length: (mm: number) => string): string {
  const { minX, minY, maxX, maxY } = boxOf(outline.outer)
  const { left, right, bottom } = frame
  const top = frame.top - (hasEdges(outline) ? 30 : 0)
  return [
    dimension(frame, [left, top - 22], [right, top - 22], length(maxX - minX)),
    dimension(frame, [right + 62, bottom], [right + 62, frame.top], length(maxY - minY))
  ].join('')
}

/** Numbers of the courses at their starts, as many as have room. */
export function courseNumbers(frame: Frame, { outline, pieces, courses, along, sizes }: Layout): string {
  const pitch = (sizes.widthMm - sizes.lapMm) * frame.pxPerMm
  const every = [1, 2, 5, 10, 20, 50, 100].find((step) => step * pitch >= frame.small * (along === 'x' ? 1.15 : 1.6)) ?? 200
  const numbers = Array.from({ length: courses }, (_, index) => index + 1).filter((course) => (course - 1) % every === 0)
  return numbers
    .map((course) => {
      const box = boxOfRegion(pieces.filter((piece) => piece.course === course).flatMap(({ region }) => region))
      if (along === 'x')
        return words(frame.left - 14, frame.y((box.minY + box.maxY) / 2) + 10, String(course), { size: frame.small, anchor: 'end', bold: true })
      return words(frame.x((box.minX + box.maxX) / 2), frame.bottom + frame.small * (hasEdges(outline) ? 2.1 : 1.3), String(course), {
        size: frame.small,
        anchor: 'middle',
        bold: true
      })
    })
    .join('')
}

const mostEdges = 16

function hasEdges({ outer }: Layout['outline']): boolean {
  return outer.length !== 4 && outer.length <= mostEdges
}

/** The length of each edge of a roof that is no rectangle, along it on the outside; of short edges and where the courses are numbered none. */
export function edgeLengths(frame: Frame, { outline, along }: Layout, length: (mm: number) => string): string {
  if (!hasEdges(outline)) return ''
  const { minX, minY } = boxOf(outline.outer)
  return outline.outer
    .map((from, index) => {
      const to = outline.outer[(index + 1) % outline.outer.length] as Point
      const numbered = along === 'x' ? from[0] === minX && to[0] === minX : from[1] === minY && to[1] === minY
      return numbered ? '' : edgeLength(frame, from, to, length)
    })
    .join('')
}

/** The ring runs anticlockwise: outside is to the right of the way. */
function edgeLength(frame: Frame, [x1, y1]: Point, [x2, y2]: Point, length: (mm: number) => string): string {
  const mm = Math.hypot(x2 - x1, y2 - y1)
  const said = length(mm)
  if (mm * frame.pxPerMm < widthOf(said, frame.small) + 10) return ''
  const away = frame.small * 0.75
  const [x, y] = [frame.x((x1 + x2) / 2) + ((y2 - y1) / mm) * away, frame.y((y1 + y2) / 2) + ((x2 - x1) / mm) * away]
  const turn = (-Math.atan2(y2 - y1, x2 - x1) * 180) / Math.PI
  const readable = turn >= 90 || turn < -90 ? turn - 180 * Math.sign(turn) : turn
  const label = words(x, y + frame.small * 0.36, said, { size: frame.small, anchor: 'middle' })
  return tag('g', { transform: `rotate(${number(readable)} ${number(x)} ${number(y)})` }, label)
}

/** North is up. */
export function northArrow(x: number, y: number, size: number, letter: string): string {
  const points = `${x},${y - 34} ${x - 16},${y + 14} ${x},${y + 3} ${x + 16},${y + 14}`
  return [
    tag('polygon', { points, fill: paper, stroke: ink, 'stroke-width': 3 }),
    tag('polygon', { points: `${x},${y - 34} ${x},${y + 3} ${x + 16},${y + 14}`, fill: ink }),
    words(x - 24, y + 6, letter, { size, anchor: 'end', bold: true })
  ].join('')
}

/** A bar of round length in two halves; `steps`: lengths in mm of one half that read well. */
export function scaleBar(frame: Frame, y: number, steps: readonly number[], length: (mm: number) => string): string {
  const most = (frame.right - frame.left) / 4
  const half = [...steps].reverse().find((step) => step * frame.pxPerMm <= most) ?? (steps[0] as number)
  const wide = half * frame.pxPerMm
  const left = frame.left
  return [
    tag('rect', { x: left, y, width: wide, height: 14, fill: ink, stroke: ink, 'stroke-width': 2 }),
    tag('rect', { x: left + wide, y, width: wide, height: 14, fill: paper, stroke: ink, 'stroke-width': 2 }),
    words(left + 2 * wide + 12, y + 17, length(2 * half), { size: frame.small })
  ].join('')
}
