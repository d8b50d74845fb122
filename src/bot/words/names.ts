import { rawAt } from './cursor.js'
import { unitWords } from './unit.js'
import type { Walk } from './walk.js'

const nameAt = /^(?=.{2,20}$)[A-Za-z][A-Za-z-]*\d[A-Za-z0-9-]*$/

/** The name of a kit or welder (letters with a digit, `K7`), upper-cased; null for any other word. */
export function nameOf(word: string): string | null {
  return nameAt.test(word) ? word.toUpperCase() : null
}

/** As `nameOf`, but a unit such as `m2` is no name. */
export function nameNotUnit(word: string): string | null {
  return unitWords.has(word.toLowerCase()) ? null : nameOf(word)
}

/** Takes a name that stands here; null when another word does. */
export function takeName(walk: Walk, read = nameNotUnit): string | null {
  const raw = rawAt(walk.text, walk.pos)
  const name = read(raw)
  if (name !== null) walk.pos += raw.length
  return name
}
