import { type Instant, toIso } from '../../core/instant.js'
import { due, type Slot } from '../../core/schedule.js'
import type { SiteKey, SiteSettings } from '../../core/site.js'
import type { KeptSite, Slots } from '../chat-ports.js'
import { drain } from '../outbox/drain.js'
import type { DrainPorts } from '../outbox/drain-ports.js'
import { settingsOf } from '../session/session.js'
import { postKinds, scheduleOf } from './index.js'
import { claimOf, manyTurns, queueTurns, type Turn } from './queue-turns.js'
import { summarize } from './summary-tick.js'
import { tellOfDead } from './tell-dead.js'
import type { TickPorts } from './tick-ports.js'
import { watchSites } from './watch-tick.js'

/** What one tick did, by slot key. */
export interface Ticked {
  readonly at: string
  readonly due: readonly string[]
  readonly queued: readonly string[]
  readonly sent: readonly string[]
  readonly skipped: readonly string[]
}

interface Site {
  readonly key: SiteKey
  readonly settings: SiteSettings
  readonly seq: number
}

const always = async () => true

/** One look at the clock: queues what is due at any site, once, and sends what is queued. Throws only where the store fails. */
export async function tick(now: Instant, ports: TickPorts): Promise<Ticked> {
  const kept = await ports.slots.keptSites()
  const sites = await openSites(kept)
  const turns = await unclaimed(
    sites.flatMap((site) => turnsOf(site, now)),
    ports.slots
  )
  const sending = { ...ports.drain, channelOf: channels(sites, ports) }
  // Many turns take long to queue, and who queues them may not live to send: what is queued already goes first.
  const before = turns.length > manyTurns ? await drain(now, { ...sending, wait: null }) : null
  const goOn = ports.goOn ?? always
  const done = await queueTurns(turns, now, { ...ports, goOn })
  const queued = done.filter(({ stale }) => !stale).map(({ slot }) => slot.key)
  const watched = await watchSites(now, sites, { ...ports, goOn, looked: ports.looked ?? null, clock: ports.drain.clock })
  const summed = await summarize(now, sites, ports)
  await tellOfDead(now, (workspace) => kept.find(({ key }) => key.workspace === workspace)?.key ?? null, ports)
  const { sent, skipped } = await drain(now, sending)
  return {
    at: toIso(now),
    due: [...turns.filter(({ stale }) => !stale).map(({ slot }) => slot.key), ...watched, ...summed],
    queued: [...queued, ...watched, ...summed],
    sent: [...(before?.sent ?? []), ...sent],
    skipped: [...(before?.skipped ?? []), ...skipped]
  }
}

async function openSites(kept: readonly KeptSite[]): Promise<readonly Site[]> {
  const sites: Site[] = []
  for (const { key, base, state, seq } of kept) {
    const settings = await settingsOf({ base, state: async () => state })
    if (!settings.closed) sites.push({ key, settings, seq })
  }
  return sites
}

function turnsOf({ key, settings, seq }: Site, now: Instant): readonly Turn[] {
  const slots = due(now, scheduleOf(key, settings), postKinds)
  const turn = (stale: boolean) => (slot: Slot) => ({ key, settings, seq, slot, stale })
  return [...slots.due.map(turn(false)), ...slots.stale.map(turn(true))]
}

async function unclaimed(turns: readonly Turn[], slots: Slots): Promise<readonly Turn[]> {
  const byWorkspace = new Map<string, Turn[]>()
  for (const turn of turns) {
    const own = byWorkspace.get(turn.key.workspace)
    if (own === undefined) byWorkspace.set(turn.key.workspace, [turn])
    else own.push(turn)
  }
  const left: Turn[] = []
  for (const [workspace, own] of byWorkspace) {
    const taken = await slots.claimed(workspace, own.map(claimOf))
    left.push(...own.filter((turn) => !taken.has(claimOf(turn))))
  }
  return left
}

/** The channel of a site as it is now, by workspace and site. */
function channels(sites: readonly Site[], ports: TickPorts): DrainPorts['channelOf'] {
  const byKey = new Map(sites.map((site) => [`${site.key.workspace} ${site.key.site}`, site]))
  return ({ workspace, site }) => {
    const found = byKey.get(`${workspace} ${site}`)
    return found === undefined ? null : ports.channelOf(found.key, found.settings)
  }
}
