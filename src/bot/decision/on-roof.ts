import type { Folded } from '../../core/log/fold.js'
import { emptySite, type SiteState } from '../../core/log/states/site.js'
import type { VoidState } from '../../core/log/states/void.js'
import type { OpenVoid } from '../../core/sheets/roof-drawing.js'
import type { Store } from '../ports.js'

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
  const rows = await view.states('void:')
  const voids = rows
    .flatMap(({ state }) => (state as unknown as Folded<VoidState>).is ?? [])
    .filter(({ state }) => state !== 'passed')
    .map(({ number, found: { course, on, distanceM } }) => ({ number, course, on, distanceM }))
    .sort((a, b) => a.number - b.number)
  const state = (await view.state('site'))?.state as unknown as Folded<SiteState> | undefined
  return { voids, laidM2: (state?.is ?? emptySite).areaM2 }
}
