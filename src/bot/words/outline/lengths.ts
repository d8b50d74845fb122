import { matchAt } from '../match.js'
import { atNumber, takeQuantity } from '../quantity.js'
import { Refused } from '../refused.js'
import { slotValue } from '../slot.js'
import type { slots } from '../slots/numbers.js'
import type { Quantity } from '../unit.js'
import type { Walk } from '../walk.js'

/** Two lengths as typed, not yet in one unit: a unit also covers the bare numbers before it. */
export interface Typed {
  readonly quantities: readonly Quantity[]
  readonly raw: string
}

const byAt = /[ \t\u00a0]{0,3}(?:[x×]|(?:by|por|par|sur)(?![\p{L}\p{M}]))[ \t\u00a0]{0,3}(?=[\p{Nd}.,½¼¾])/iuy
/** A unit glued to its `x`: 24mx36m. */
const gluedAt = /(mm|cm|m|ft|in)(?=[x×][ \t]{0,3}\p{Nd})/iuy
const markOrUnit = `(?:['’′]|mm|cm|m|ft|in|["”″])?`
const sizedAt = /[\d.,]+[ \u00a0]{0,3}[x×]/iuy
const pairAt = new RegExp(
  `[-−]?\\d{1,9}(?:\\.\\d{1,9})?[ \\u00a0]{0,2}${markOrUnit}(?:[- ]?\\d{1,2}[ ]?(?:["”″]|in))?[ ]{0,2}(,)[ ]{0,2}(?=[-−]?\\d)`,
  'iuy'
)

/** `24x36`, `24 m by 36 m`, `80' x 120'`; null, and nothing moved, when none stands here. */
export function takeSize(walk: Walk): Typed | null {
  const start = walk.pos
  if (!atNumber(walk)) return null
  const first = firstOf(walk)
  if (first === null) return null
  const by = matchAt(byAt, walk.text, walk.pos)
  if (by === null) {
    walk.pos = start
    return null
  }
  walk.pos += by[0].length
  return { quantities: [first, takeQuantity(walk)], raw: walk.text.slice(start, walk.pos) }
}

/** The first number of a size; null where what stands here reads as a pair alone: `1,250` is no number, and may be two. */
function firstOf(walk: Walk): Quantity | null {
  const start = walk.pos
  try {
    return glued(walk, takeQuantity(walk))
  } catch (thrown) {
    const isPair = matchAt(pairAt, walk.text, start) !== null && matchAt(sizedAt, walk.text, start) === null
    if (!(thrown instanceof Refused) || !isPair) throw thrown
    walk.pos = start
    return null
  }
}

function glued(walk: Walk, quantity: Quantity): Quantity {
  const unit = quantity.unit === null ? matchAt(gluedAt, walk.text, walk.pos)?.[1] : undefined
  if (unit === undefined) return quantity
  walk.pos += unit.length
  return { ...quantity, unit: unit.toLowerCase() as Quantity['unit'], raw: `${quantity.raw}${unit}` }
}

/** `5,9` or `5.5 m, 9 m`: here the comma parts, and only a point is decimal. Null, and nothing moved, when none stands here. */
export function takePair(walk: Walk): Typed | null {
  const found = matchAt(pairAt, walk.text, walk.pos)
  if (found === null) return null
  const start = walk.pos
  const comma = start + found[0].lastIndexOf(',')
  const second = start + found[0].length
  const parted: Walk = { ...walk, text: `${walk.text.slice(0, comma)};${walk.text.slice(comma + 1, pairEnd(walk.text, second))}` }
  const first = takeQuantity(parted)
  parted.pos = second
  const last = takeQuantity(parted)
  walk.pos = parted.pos
  return { quantities: [first, last], raw: walk.text.slice(start, walk.pos) }
}

/** Where the next pair begins, so that its first number is not read as the inches of this one. */
function pairEnd(text: string, from: number): number {
  for (const gap of text.slice(from, from + 20).matchAll(/[ \u00a0]+/g)) {
    if (matchAt(pairAt, text, from + gap.index + gap[0].length) !== null) return from + gap.index
  }
  return text.length
}

/** The pairs that stand here one after another. */
export function takePairs(walk: Walk, next: () => boolean): readonly Typed[] {
  const pairs: Typed[] = []
  for (let pair = takePair(walk); pair !== null; pair = next() ? null : takePair(walk)) pairs.push(pair)
  return pairs
}

/** Lengths in mm; a bare number has the unit of the next that has one. */
export function inMm(typed: readonly Typed[], slot: typeof slots.roofSide | typeof slots.corner, walk: Walk): readonly (readonly [number, number])[] {
  const all = typed.flatMap(({ quantities }) => quantities)
  const filled = all.map((quantity, i) =>
    quantity.unit !== null ? quantity : { ...quantity, unit: all.slice(i).find(({ unit }) => unit !== null)?.unit ?? null }
  )
  // From the last: a unit that is wrong is named where it stands.
  const mm = filled
    .reverse()
    .map((quantity) => slotValue(quantity, slot, walk.reader) * 1000)
    .reverse()
  return typed.map((_, i) => [mm[2 * i] as number, mm[2 * i + 1] as number])
}
