import type { Instant } from '../instant.js'
import type { Cylinder } from './cylinder.js'
import { conductionTrail, type KitCourses, type Surroundings } from './kit-model.js'
import { steady } from './place.js'
import { valueAt } from './trail.js'

export interface StartQuestion {
  readonly kit: Cylinder
  /** The kit where it stands now, until it is put into the box. */
  readonly waiting: Pick<KitCourses, 'fast' | 'slow'>
  /** The box, which stays as it is. */
  readonly box: Surroundings
  /** Null: any temperature will do. */
  readonly minC: number | null
  readonly from: Instant
  readonly readyBy: Instant
}

/**
 * Latest instant (in steps of the trail) at which a kit can be put into the box and have a mean of `minC` by `readyBy`: it
 * waits at the colder of its two bounds, is taken to be uniform then, and warms by the slow bound. `readyBy` itself when it
 * needs no box; null when it is too late already, or when `readyBy` is before `from` or further off than is known.
 */
export function startBy({ kit, waiting, box, minC, from, readyBy }: StartQuestion): Instant | null {
  const around = box(from)
  if (!(readyBy >= from && readyBy - from <= 72 * 3600) || around === null) return null
  if (minC === null) return readyBy
  // In constant surroundings the rise is the same share of any difference: one course from 0 to 1 °C serves every start.
  const rise = conductionTrail(kit, 1, { at: 0, c: 0 }, readyBy - from, steady({ ...around, toC: 1 }))
  const starts = [from, ...waiting.fast.at.filter((at) => at > from && at < readyBy), readyBy]
  return starts.findLast((at) => ready(at)) ?? null

  function ready(at: Instant): boolean {
    const c = colder(waiting, at)
    const share = valueAt(rise, 'meanC', readyBy - at)
    return c !== null && share !== null && minC !== null && around !== null && c + (around.toC - c) * share >= minC
  }
}

function colder({ fast, slow }: StartQuestion['waiting'], at: Instant): number | null {
  const quick = valueAt(fast, 'meanC', at)
  const late = valueAt(slow, 'meanC', at)
  return quick === null || late === null ? null : Math.min(quick, late)
}
