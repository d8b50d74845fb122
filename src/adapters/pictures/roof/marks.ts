import type { Piece } from '../../../core/sheets/layout.js'
import { boxOfRegion, inPolygon, type Point, type Region } from '../../../core/sheets/polygon.js'
import type { RoofDrawing } from '../../../core/sheets/roof-drawing.js'
import { at, type Frame } from './frame.js'
import { type Area, areaOf, nothingPlaced, type Placed, place, type Wish } from './labels.js'
import { originOf } from './plan.js'

/** What is written on the plan, the needed first: open voids, patches, zones, then the lengths that sheets are cut to. */
export interface Marks {
  readonly placed: Placed
  readonly patchesLeft: number
}

export function marksOf(frame: Frame, drawing: RoofDrawing, length: (mm: number) => string): Marks {
  const voids = place(nothingPlaced, voidWishes(frame, drawing))
  const patches = place(voids, patchWishes(frame, drawing))
  const covered = [...drawing.layout.strips.map(({ region }) => region), ...drawing.layout.outline.holes.map((outer) => [{ outer, holes: [] }])]
  const taken = [...patches.taken, ...covered.map((region) => pixels(frame, region))]
  const zones = place({ ...patches, taken }, zoneWishes(frame, drawing))
  return { placed: place(zones, pieceWishes(frame, drawing, length)), patchesLeft: patches.left - voids.left }
}

/** Lines are drawn about the edges, not inside them. */
const rim = 2

function pixels(frame: Frame, region: Region): Area {
  const { minX, minY, maxX, maxY } = boxOfRegion(region)
  return { left: frame.x(minX) - rim, top: frame.y(maxY) - rim, right: frame.x(maxX) + rim, bottom: frame.y(minY) + rim }
}

function voidWishes(frame: Frame, { voids }: RoofDrawing): readonly Wish[] {
  return voids.map(({ number, at: place }) => ({ at: [at(frame, place)], text: String(number), size: frame.label, bold: true, in: 'dark' }))
}

function patchWishes(frame: Frame, { layout }: RoofDrawing): readonly Wish[] {
  return layout.patches.map(({ number, at: place }) => ({ at: [at(frame, place)], text: String(number), size: frame.small * 0.86, in: 'disc' }))
}

/** Along a line from one end to the other: the middle first. */
const shares = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8] as const

/** One letter for each part that has room for it. */
function zoneWishes(frame: Frame, { zones, layout }: RoofDrawing): readonly Wish[] {
  if (zones?.kind !== 'zones') return []
  const [originX, originY] = originOf(layout)
  return zones.parts.flatMap(({ zone, left, right, bottom, top }) => {
    const wish = { text: zone, size: frame.label, bold: true, in: 'square' } as const
    const own = areaOf(wish, [0, 0])
    const [wide, high] = [(right - left) * 1000 * frame.pxPerMm, (top - bottom) * 1000 * frame.pxPerMm]
    if (own.right - own.left > wide || own.bottom - own.top > high) return []
    const across = shares.flatMap((u) => shares.map((v) => [u, v] as const)).slice(0, 30)
    const places = across.map(([v, u]) => at(frame, [originX + (left + (right - left) * u) * 1000, originY + (bottom + (top - bottom) * v) * 1000]))
    return [{ ...wish, at: places }]
  })
}

function pieceWishes(frame: Frame, { layout }: RoofDrawing, length: (mm: number) => string): readonly Wish[] {
  const upright = layout.along === 'y'
  return layout.pieces.flatMap((piece) => {
    const text = frame.use === 'paper' ? `${piece.roll}: ${length(piece.cutMm)}` : length(piece.cutMm)
    const wish = { text, size: frame.small, upright }
    const places = insideOf(frame, piece, wish)
    return places.length === 0 ? [] : [{ ...wish, at: places }]
  })
}

/** Places along the middle of a sheet where words lie all inside it. */
function insideOf(frame: Frame, { region }: Piece, wish: Omit<Wish, 'at'>): readonly (readonly [number, number])[] {
  const { minX, minY, maxX, maxY } = boxOfRegion(region)
  return shares
    .map(
      (share): Point =>
        wish.upright === true ? [(minX + maxX) / 2, minY + (maxY - minY) * share] : [minX + (maxX - minX) * share, (minY + maxY) / 2]
    )
    .filter((middle) => corners(frame, wish, middle).every((corner) => region.some((polygon) => inPolygon(corner, polygon))))
    .map((middle) => at(frame, middle))
}

function corners({ pxPerMm }: Frame, wish: Omit<Wish, 'at'>, [x, y]: Point): readonly Point[] {
  const { right, bottom } = areaOf(wish, [0, 0])
  const [wide, high] = [right / pxPerMm, bottom / pxPerMm]
  return [
    [x - wide, y - high],
    [x + wide, y - high],
    [x + wide, y + high],
    [x - wide, y + high]
  ]
}
