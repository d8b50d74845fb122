import type { SiteSettings } from '../site.js'
import type { Layout } from './layout.js'
import { boxOf, type Point } from './polygon.js'
import type { ZoneAnswer } from './zones/index.js'

/** An open void as it was found: where along its course, or along the end joint, strip or patch of it. */
export interface OpenVoid {
  readonly number: number
  readonly course: number
  readonly on: 'lap' | 'end' | 'strip' | 'patch'
  readonly distanceM: number | null
}

/** Where an open void lies on the plan, mm. */
export interface PlacedVoid {
  readonly number: number
  readonly at: Point
}

/** A phone shows a drawing 380 px wide; paper has room for more and smaller words. */
export type DrawingUse = 'phone' | 'paper'

/** What the drawing of a roof shows. North is up. */
export interface RoofDrawing extends Pick<SiteSettings, 'lang' | 'units' | 'invented'> {
  readonly site: string
  readonly layout: Layout
  /** Null where none were asked for. */
  readonly zones: ZoneAnswer | null
  readonly voids: readonly PlacedVoid[]
  readonly use: DrawingUse
}

/**
 * Puts an open void on the plan: so far along its course from the course's start (left or low end), on the visible edge of its lap;
 * on an end joint, strip or patch at the joint of that course next to it. Null for a course that the roof does not have.
 */
export function placedVoid({ number, course, on, distanceM }: OpenVoid, layout: Layout): PlacedVoid | null {
  const pieces = layout.pieces.filter((piece) => piece.course === course)
  if (pieces.length === 0) return null
  const box = boxOf(pieces.flatMap(({ region }) => region.flatMap(({ outer }) => outer)))
  const alongX = layout.along === 'x'
  const [from, to] = alongX ? [box.minX, box.maxX] : [box.minY, box.maxY]
  const [low, high] = alongX ? [box.minY, box.maxY] : [box.minX, box.maxX]
  const wanted = distanceM === null ? (from + to) / 2 : Math.min(to, from + distanceM * 1000)
  const along = on === 'lap' ? wanted : nearest(wanted, layout, course)
  const across = on === 'lap' ? low : (low + high) / 2
  return { number, at: alongX ? [along, across] : [across, along] }
}

function nearest(wanted: number, { joints }: Layout, course: number): number {
  const places = joints.filter((joint) => joint.course === course).map(({ atMm }) => atMm)
  return places.reduce((best, at) => (Math.abs(at - wanted) < Math.abs(best - wanted) ? at : best), places[0] ?? wanted)
}
