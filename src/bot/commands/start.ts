import { toIso } from '../../core/instant.js'
import { nextSlot } from '../../core/schedule.js'
import { type Beside, type Done, told } from '../context.js'
import { toJsonObject } from '../json.js'
import { postKinds, scheduleOf } from '../posts/index.js'
import type { Said } from '../words/said.js'
import { makeSite } from './site.js'

/** A site made with all that it needs, and what comes next; without one, which sites there are and how to begin. */
export async function start({ site }: Extract<Said, { command: 'start' }>, beside: Beside): Promise<Done> {
  const { ask, ports } = beside
  if (site === null) return told({ command: 'start', site: null, numbers: { sites: (await ports.store.sites(ask.workspace)).slice(0, 30) } })
  const made = await makeSite(site, 'start', beside)
  if ('ok' in made) return made
  const { base, logged } = made
  const key = { workspace: ask.workspace, site: site.name }
  const first = base.channel === null ? null : nextSlot(ask.at, scheduleOf(key, base), postKinds)
  const next = first === null ? null : { kind: first.kind, at: toIso(first.dueAt) }
  return told({
    command: 'start',
    site: site.name,
    numbers: { site: toJsonObject(base), next, ...(base.channel === ports.ownChannel?.(site.name) ? { invited: true } : {}) },
    logged,
    invented: false
  })
}
