import { inRing, type Point, type Ring, ringAreaMm2 } from './polygon.js'

/** A corner in mm, and where in the file it stands. */
export interface FileCorner {
  readonly at: Point
  readonly word: string
}

export type FileRing = readonly FileCorner[]

/** Why a file is no outline; `word`: where, or what was met. */
export interface OutlineFileProblem {
  readonly what:
    | 'too-large'
    | 'not-text'
    | 'not-json'
    | 'not-dxf'
    | 'no-outline'
    | 'several-outlines'
    | 'not-closed'
    | 'curve'
    | 'bad-number'
    | 'unit'
  readonly word: string
}

export type ReadOutline =
  | { readonly ok: true; readonly outer: FileRing; readonly openings: readonly FileRing[] }
  | { readonly ok: false; readonly problem: OutlineFileProblem }

export function unreadable(what: OutlineFileProblem['what'], word: string): ReadOutline {
  return { ok: false, problem: { what, word: shortWord(word) } }
}

/** What stands in a file may be as long as the file: it is said back in so many characters. */
export function shortWord(word: string): string {
  return word.slice(0, 80)
}

/** Corners a file may have: what is laid out takes no more. */
const mostCorners = 10_000

/** The largest ring is the roof and the others lie in it, else there are several roofs. Rings are not checked further here. */
export function nested(rings: readonly FileRing[]): ReadOutline {
  const corners = rings.reduce((sum, ring) => sum + ring.length, 0)
  if (corners > mostCorners) return unreadable('too-large', String(corners))
  const bySize = [...rings].sort((a, b) => sizeOf(b) - sizeOf(a))
  const [outer, ...openings] = bySize
  if (outer === undefined) return unreadable('no-outline', '')
  const edge = ringOf(outer)
  const outside = openings.find(([first]) => first !== undefined && !inRing(first.at, edge))
  if (outside !== undefined) return unreadable('several-outlines', outside[0]?.word ?? '')
  return { ok: true, outer, openings: rings.filter((ring) => ring !== outer) }
}

function ringOf(ring: FileRing): Ring {
  return ring.map(({ at }) => at)
}

function sizeOf(ring: FileRing): number {
  return Math.abs(ringAreaMm2(ringOf(ring)))
}

/** A ring whose last corner repeats the first (within 1 mm) without it. */
export function open(ring: FileRing): FileRing {
  const [first, last] = [ring[0], ring.at(-1)]
  if (ring.length < 2 || first === undefined || last === undefined) return ring
  return Math.hypot(first.at[0] - last.at[0], first.at[1] - last.at[1]) <= 1 ? ring.slice(0, -1) : ring
}
