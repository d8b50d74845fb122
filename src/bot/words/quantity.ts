import { matchAt } from './match.js'
import { numberStartsAt, readNumber } from './number.js'
import { type Quantity, readUnit } from './unit.js'
import type { Walk } from './walk.js'

/** The inches behind feet, and where they end; null when what follows is not inches of the same length. */
function inchesAfter(text: string, pos: number): { value: number; end: number } | null {
  const gap = matchAt(/[ \u00a0\u202f]{0,3}-?/y, text, pos)?.[0].length ?? 0
  const start = pos + gap
  if (!numberStartsAt(text, start) || /[-−+]/.test(text[start] as string)) return null
  const { value, end } = readNumber(text, start)
  const unit = readUnit(text, end)
  if (unit.degree || (unit.unit !== null && unit.unit !== 'in') || !(value < 12)) return null
  return { value, end: unit.end }
}

/** Whether a number starts where the walk stands. */
export function atNumber(walk: Walk): boolean {
  return numberStartsAt(walk.text, walk.pos)
}

/** Reads the number here with its unit; feet and inches are one value, in feet. A `count` takes no unit of length with it. */
export function takeQuantity(walk: Walk, count = false): Quantity {
  const start = walk.pos
  const number = readNumber(walk.text, start, count)
  const unit = readUnit(walk.text, number.end)
  walk.pos = unit.end
  let { value } = number
  const inches = unit.unit === 'ft' ? inchesAfter(walk.text, unit.end) : null
  if (inches) {
    const negative = value < 0 || Object.is(value, -0)
    value = (negative ? -1 : 1) * (Math.abs(value) + inches.value / 12)
    walk.pos = inches.end
  }
  return { value, unit: unit.unit, degree: unit.degree, raw: walk.text.slice(start, walk.pos) }
}
