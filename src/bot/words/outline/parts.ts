import type { CornerName } from '../../../core/sheets/outline.js'
import type { Point } from '../../../core/sheets/polygon.js'
import { atEnd, find, rawAt } from '../cursor.js'
import { fold } from '../fold.js'
import { missing, Refused } from '../refused.js'
import type { CornerSaid } from '../said.js'
import { slots } from '../slots/numbers.js'
import { choicesOf } from '../vocabulary.js'
import { type Heard, note, type Walk } from '../walk.js'
import { inMm, type Typed, takePair, takePairs, takeSize } from './lengths.js'

const cornerNames = choicesOf<CornerName>([
  ['ne', { en: 'ne northeast north-east', es: 'ne noreste nordeste', fr: 'ne nord-est' }],
  ['nw', { en: 'nw northwest north-west', es: 'no noroeste', fr: 'no nord-ouest' }],
  ['se', { en: 'se southeast south-east', es: 'se sureste sudeste', fr: 'se sud-est' }],
  ['sw', { en: 'sw southwest south-west', es: 'so suroeste sudoeste', fr: 'so sud-ouest' }]
])

/** Whether nothing more of a list stands here. */
function ended(walk: Walk): boolean {
  return atEnd(walk)
}

/** `24x36` or a list of corners; false when neither stands here. */
export function readOutline(walk: Walk): boolean {
  const size = takeSize(walk)
  if (size === null) return readCorners(walk)
  if (walk.fields.size !== undefined) throw new Refused('duplicate', size.raw, { label: 'outline' })
  const [widthMm, depthMm] = inMm([size], slots.roofSide, walk)[0] as readonly [number, number]
  walk.fields.size = { widthMm, depthMm, word: size.raw }
  note(walk, 'outline', size.raw)
  return true
}

function readCorners(walk: Walk): boolean {
  const start = walk.pos
  const corners = takeCorners(walk)
  if (corners === null) return false
  if (walk.fields.corners !== undefined) throw new Refused('duplicate', walk.text.slice(start, walk.pos), { label: 'outline' })
  walk.fields.corners = corners
  note(walk, 'outline', corners.map(({ word }) => word).join(' '))
  return true
}

function takeCorners(walk: Walk): readonly CornerSaid[] | null {
  const typed = takePairs(walk, () => ended(walk))
  return typed.length === 0 ? null : placed(typed, walk)
}

function placed(typed: readonly Typed[], walk: Walk): readonly CornerSaid[] {
  return inMm(typed, slots.corner, walk).map((at, i) => ({ at, word: (typed[i] as Typed).raw }))
}

/** `notch 6x8 ne` or `notch ne 6x8`. */
export function readNotch(walk: Walk, heard: Heard): void {
  const start = walk.pos - heard.raw.length
  const early = takeCornerName(walk)
  const size = atEnd(walk) ? null : takeSize(walk)
  if (size === null) throw missing('size')
  const corner = early ?? takeCornerName(walk)
  if (corner === null) throw new Refused('missing', heard.raw, { label: 'corner' })
  const [widthMm, depthMm] = inMm([size], slots.roofSide, walk)[0] as readonly [number, number]
  const word = walk.text.slice(start, walk.pos)
  const notches = walk.fields.notches ?? []
  if (notches.some((one) => one.corner === corner)) throw new Refused('duplicate', word, { label: 'notch' })
  walk.fields.notches = [...notches, { corner, widthMm, depthMm, word }]
  note(walk, 'notch', `${size.raw} ${corner}`)
}

function takeCornerName(walk: Walk): CornerName | null {
  if (atEnd(walk)) return null
  const raw = rawAt(walk.text, walk.pos)
  const corner = cornerNames.get(fold(raw))
  if (corner === undefined) return null
  walk.pos += raw.length
  return corner
}

/** `opening 2x1.2 at 5,9`: the corner nearest to 0,0; or its corners one by one. */
export function readOpening(walk: Walk, heard: Heard): void {
  const start = walk.pos - heard.raw.length
  const early = takePlace(walk)
  const size = atEnd(walk) ? null : takeSize(walk)
  const corners = early !== null || size !== null || atEnd(walk) ? null : takeCorners(walk)
  const opening = corners ?? rectangular(walk, { heard, start, early, size })
  walk.fields.openings = [...(walk.fields.openings ?? []), opening]
  note(walk, 'opening', walk.text.slice(start + heard.raw.length, walk.pos).trim())
}

interface OpeningHeard {
  readonly heard: Heard
  readonly start: number
  readonly early: Typed | null
  readonly size: Typed | null
}

function rectangular(walk: Walk, { heard, start, early, size }: OpeningHeard): readonly CornerSaid[] {
  if (size === null) throw new Refused('missing', heard.raw, { label: 'size' })
  const place = early ?? takePlace(walk)
  if (place === null) throw new Refused('missing', heard.raw, { label: 'at' })
  const [width, depth] = inMm([size], slots.roofSide, walk)[0] as readonly [number, number]
  const [x, y] = inMm([place], slots.corner, walk)[0] as readonly [number, number]
  const word = walk.text.slice(start, walk.pos)
  const corners: readonly Point[] = [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth]
  ]
  return corners.map((at) => ({ at, word }))
}

/** `at 5,9`; null, and nothing moved, when it does not stand here. */
function takePlace(walk: Walk): Typed | null {
  const found = atEnd(walk) ? null : find(walk, walk.lexicon)
  if (found?.label !== 'at') return null
  walk.pos = found.end
  const pair = atEnd(walk) ? null : takePair(walk)
  if (pair === null) throw new Refused('missing', found.raw, { label: 'at' })
  return pair
}
