import type { Layout } from '../../../core/sheets/layout.js'
import { boxOf, type Point, type Ring, ringsOf } from '../../../core/sheets/polygon.js'
import type { DrawingUse } from '../../../core/sheets/roof-drawing.js'
import { number } from '../svg.js'

interface Room {
  readonly width: number
  readonly most: number
  readonly title: number
  readonly label: number
  readonly small: number
}

/** 30 px here are 11 px on a phone that shows the drawing 380 px wide. */
const rooms: Readonly<Record<DrawingUse, Room>> = {
  phone: { width: 1000, most: 1300, title: 38, label: 30, small: 28 },
  paper: { width: 1700, most: 1700, title: 34, label: 24, small: 18 }
}

/** Where a plan stands on its drawing, in pixels, and the sizes of its words. */
export interface Frame extends Room {
  readonly use: DrawingUse
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
  readonly pxPerMm: number
  x(mm: number): number
  y(mm: number): number
}

const sides = { left: 112, right: 84, top: 215 }
/** A plan long and low still gets some height. */
const leastScaleMm = 1000

/** As large as width and height allow, in the middle. `down`: room kept above it. */
export function frameOf({ outline }: Pick<Layout, 'outline'>, use: DrawingUse, down: number): Frame {
  const room = rooms[use]
  const { minX, minY, maxX, maxY } = boxOf(outline.outer)
  const wide = room.width - sides.left - sides.right
  const pxPerMm = Math.min(wide / Math.max(leastScaleMm, maxX - minX), room.most / Math.max(leastScaleMm, maxY - minY))
  const left = sides.left + (wide - (maxX - minX) * pxPerMm) / 2
  const top = sides.top + down
  const x = (mm: number) => left + (mm - minX) * pxPerMm
  const y = (mm: number) => top + (maxY - mm) * pxPerMm
  return { ...room, use, left, top, right: x(maxX), bottom: y(minY), pxPerMm, x, y }
}

export function at({ x, y }: Frame, [mmX, mmY]: Point): readonly [number, number] {
  return [x(mmX), y(mmY)]
}

/** Rings as the path of an SVG; filled by the even-odd rule, so that holes stay bare. */
export function pathOf(frame: Frame, rings: readonly Ring[]): string {
  return rings.map((ring) => `M${ring.map((point) => at(frame, point).map(number).join(' ')).join('L')}Z`).join('')
}

export function outlinePath(frame: Frame, { outline }: Pick<Layout, 'outline'>): string {
  return pathOf(frame, ringsOf(outline))
}
