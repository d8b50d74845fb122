import { emptySite } from '../../core/log/states/site.js'
import type { OpenVoid } from '../../core/sheets/roof-drawing.js'
import type { Store } from '../ports.js'
import { stateOf, statesOf } from '../session/states.js'

/** What is known of a site's roof: voids that are not closed, and how much was laid. */
export interface OnRoof {
  readonly voids: readonly OpenVoid[]
  readonly laidM2: number
}

export const nothingOnRoof: OnRoof = { voids: [], laidM2: 0 }

/** As the store has it now; nothing for a site that is not there. */
export async function onRoof(store: Pick<Store, 'view'>, workspace: string, site: string): Promise<OnRoof> {
  const view = await store.view({ workspace, site })
  if (view === null) return nothingOnRoof
  const voids = (await statesOf(view, 'void'))
    .filter(({ state }) => state !== 'passed')
    .map(({ number, found: { course, on, distanceM } }) => ({ number, course, on, distanceM }))
    .sort((a, b) => a.number - b.number)
  return { voids, laidM2: ((await stateOf(view, 'site')) ?? emptySite).areaM2 }
}
