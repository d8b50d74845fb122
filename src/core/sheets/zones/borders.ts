import type { ZonePart } from './zone.js'

/** A border between two zones, m from the roof's corner. */
export interface ZoneBorder {
  readonly from: readonly [number, number]
  readonly to: readonly [number, number]
}

/** Borders between parts of different zones; parts of one zone that touch have none. */
export function zoneBorders(parts: readonly ZonePart[]): readonly ZoneBorder[] {
  return parts.flatMap((part) => parts.filter(({ zone }) => zone !== part.zone).flatMap((other) => [...upright(part, other), ...level(part, other)]))
}

function upright(part: ZonePart, other: ZonePart): readonly ZoneBorder[] {
  const [from, to] = [Math.max(part.bottom, other.bottom), Math.min(part.top, other.top)]
  return part.right === other.left && from < to ? [{ from: [part.right, from], to: [part.right, to] }] : []
}

function level(part: ZonePart, other: ZonePart): readonly ZoneBorder[] {
  const [from, to] = [Math.max(part.left, other.left), Math.min(part.right, other.right)]
  return part.top === other.bottom && from < to ? [{ from: [from, part.top], to: [to, part.top] }] : []
}
