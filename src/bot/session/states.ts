import type { Folded, Kind, States } from '../../core/log/fold.js'
import type { SiteView, StateRow } from '../ports.js'

/** The state in a row, as the store has it now; null for no row and for one that says nothing. */
export function stateIn<K extends Kind>(row: StateRow | null): States[K] | null {
  return (row?.state as unknown as Folded<States[K]> | null | undefined)?.is ?? null
}

/** The state of one subject. */
export async function stateOf(view: Pick<SiteView, 'state'>, subject: 'site'): Promise<States['site'] | null>
export async function stateOf<K extends Exclude<Kind, 'site'>>(view: Pick<SiteView, 'state'>, subject: `${K}:${string}`): Promise<States[K] | null>
export async function stateOf<K extends Kind>(view: Pick<SiteView, 'state'>, subject: string): Promise<States[K] | null> {
  return stateIn<K>(await view.state(subject))
}

/** The states of all subjects of a kind, in order of subject. */
export async function statesOf<K extends Exclude<Kind, 'site'>>(view: Pick<SiteView, 'states'>, kind: K): Promise<readonly States[K][]> {
  return (await view.states(`${kind}:`)).flatMap((row) => stateIn<K>(row) ?? [])
}
