import type { VoidData } from '../log/data.js'
import type { VoidState } from '../log/states/void.js'

/** The number of a void that is not passed yet, said with the same place and length; null for none. */
export function sameVoid(found: VoidData, voids: readonly VoidState[]): number | null {
  const same = voids.find(({ state, found: { course, on, distanceM, lengthMm } }) => {
    return state !== 'passed' && course === found.course && on === found.on && distanceM === found.distanceM && lengthMm === found.lengthMm
  })
  return same?.number ?? null
}
