import type { FileCorner, FileRing } from '../../core/sheets/outline-file.js'
import { NotAnOutline } from './text.js'

export interface Side {
  readonly from: FileCorner
  readonly to: FileCorner
}

/** Loose lines put end to end into rings; ends within 1 mm meet. One that goes on nowhere, or on to several, is no outline. */
export function chained(sides: readonly Side[]): readonly FileRing[] {
  const ends = new Map<string, number[]>()
  for (const [index, { from, to }] of sides.entries()) {
    for (const end of [from, to]) {
      const meeting = ends.get(keyOf(end))
      if (meeting === undefined) ends.set(keyOf(end), [index])
      else meeting.push(index)
    }
  }
  for (const { from, to } of sides)
    for (const end of [from, to]) if (ends.get(keyOf(end))?.length !== 2) throw new NotAnOutline('not-closed', end.word)
  const used = new Set<number>()
  return sides.flatMap((_, start) => (used.has(start) ? [] : [follow(start, sides, ends, used)]))
}

function follow(start: number, sides: readonly Side[], ends: ReadonlyMap<string, readonly number[]>, used: Set<number>): FileRing {
  const ring: FileCorner[] = []
  let side: number | undefined = start
  let here = (sides[start] as Side).from
  while (side !== undefined && !used.has(side)) {
    used.add(side)
    ring.push(here)
    const { from, to } = sides[side] as Side
    here = keyOf(from) === keyOf(here) ? to : from
    side = ends.get(keyOf(here))?.find((other) => !used.has(other))
  }
  return ring
}

function keyOf({ at: [x, y] }: FileCorner): string {
  return `${Math.round(x)} ${Math.round(y)}`
}
