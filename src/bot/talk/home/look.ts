import { type OpenItem, whatIsOpen } from '../../../core/closing/what-is-open.js'
import { sunEvents } from '../../../core/gather/daylight.js'
import { gather } from '../../../core/gather/gather.js'
import { roofOf } from '../../../core/gather/roof-of.js'
import { localDate } from '../../../core/instant.js'
import type { Outcome } from '../../../core/outcome.js'
import { outlook } from '../../../core/plan/outlook.js'
import type { Window } from '../../../core/plan/windows.js'
import type { Ask } from '../../ask.js'
import type { Ports } from '../../context.js'
import { replyOnly } from '../../handle.js'
import { readSite, weatherOn } from '../../posts/on-site.js'
import type { PostOn } from '../../posts/post.js'
import type { Reply } from '../../reply.js'
import { settingsOf } from '../../session/session.js'

/** One site as home shows it: the answer on spraying, the hours to come, and what stands open. */
export interface Look {
  readonly site: string
  readonly on: PostOn
  readonly reply: Reply
  /** The window to spray that is open or comes next today; null: none is left. */
  readonly window: Window | null
  /** False: no forecast tells of the hours. */
  readonly known: boolean
  /** Welders in use today that may not weld now. */
  readonly lapsed: readonly string[]
  readonly open: readonly OpenItem[]
}

const kept: ReadonlySet<OpenItem['what']> = new Set(['voids', 'reprobe', 'punch', 'on-hold', 'fire'])

/** Looks at one site, and writes nothing; null for one that is gone or closed. */
export async function lookAt(site: string, ask: Ask & { readonly log: false }, ports: Ports): Promise<Look | null> {
  const key = { workspace: ask.workspace, site }
  const view = await ports.store.view(key)
  const settings = view === null ? null : await settingsOf(view)
  if (view === null || settings === null || settings.closed) return null
  const now = ask.at
  const date = localDate(now, settings.zone)
  const weather = await weatherOn(ports.weather, settings, now)
  const { forecast } = weather
  const on = await readSite({ key, date, now, ...weather, wants: ['kit:', 'welder:', 'void:'] }, view, ports.sheets)
  const { memory, sheet, record } = on
  const roof = roofOf(memory, forecast, sheet, now)
  const day = outlook(memory, forecast, sheet, date, now, roof)
  const { welders } = gather(memory, forecast, sunEvents(settings, date), sheet, now, now, roof)
  const { items } = whatIsOpen({ ...memory, welders: record.welders, substrate: settings.substrate, now })
  return {
    site,
    on,
    reply: await replyOnly({ ...ask, site, text: 'spray' }, ports),
    window: day.activities.spray.windows.find(({ to, outcome }) => to > now && outcome !== 'no-go') ?? null,
    known: day.known,
    lapsed: welders.filter(({ status }) => status !== 'cleared').map(({ name }) => name),
    open: items.filter(({ what }) => kept.has(what))
  }
}

const outcomeNeed: Readonly<Record<Outcome, number>> = { 'no-go': 30, unknown: 20, caution: 10, go: 0 }

/** How much a site needs somebody: what stands open first, then the worse answer. */
export function needOf({ reply, lapsed, open }: Look): number {
  const openCount = open.reduce((sum, item) => sum + ('numbers' in item ? item.numbers.length : 1), 0)
  return (openCount > 0 || lapsed.length > 0 ? 100 : 0) + outcomeNeed[reply.outcome ?? 'unknown'] + Math.min(openCount, 9)
}
