import { emptySite } from '../../core/log/states/site.js'
import type { SiteKey, SiteSettings } from '../../core/site.js'
import { defaultSettings } from '../../core/site.js'
import { type Beside, type Done, type OnSite, refuse, told } from '../context.js'
import { toJsonObject } from '../json.js'
import type { Store } from '../ports.js'
import { openSession } from '../session/session.js'
import type { Said, SiteBegun, SiteChange } from '../words/said.js'

export async function siteShow(_said: Extract<Said, { command: 'site show' }>, { session }: OnSite): Promise<Done> {
  return told({ command: 'site', numbers: { site: toJsonObject(session.settings) } })
}

/** Changes settings: an entry, so that the record shows who set what. */
export async function siteSet(
  said: Extract<Said, { command: 'site set' }>,
  { session, sheet }: OnSite,
  at: number,
  { ports }: Beside
): Promise<Done> {
  if (session.ask.role !== 'supervisor') return refuse('not-allowed', 'site', { who: 'supervisor' })
  const wrong = unknownChoice(said.change, ports.sheets.ids, ports.sheets.byId(said.change.limits ?? sheet.id)?.substrates ?? {})
  if (wrong !== null) return wrong
  const taken = await takenChannel(said.change, session.view.key, ports.store)
  if (taken !== null) return taken
  const { voids, punch } = (await session.latest('site')) ?? emptySite
  const open = Object.keys(voids.unsettled).length > 0 ? 'open-voids' : (punch?.open.length ?? 0) > 0 ? 'open-punch' : null
  if (said.change.closed === true && open !== null) return refuse('wrong-state', session.view.key.site, { label: 'site', state: open })
  await session.log('setting', 'site', said.change, at)
  const settings: SiteSettings = { ...session.settings, ...said.change }
  return told({ command: 'site', numbers: { site: toJsonObject(settings) } })
}

/** A channel belongs to one site: what is said in it must have one meaning. */
async function takenChannel({ channel }: SiteChange, { workspace, site }: SiteKey, store: Store): Promise<Done | null> {
  if (channel === undefined || channel === null) return null
  const owner = await store.siteOfChannel(workspace, channel)
  return owner === null || owner === site ? null : refuse('wrong-state', channel, { label: 'channel', state: 'taken' })
}

function unknownChoice(change: SiteChange, sheets: readonly string[], substrates: Readonly<Record<string, unknown>>): Done | null {
  if (change.limits !== undefined && !sheets.includes(change.limits))
    return refuse('not-found', change.limits, { label: 'limits', nearest: [...sheets] })
  if (change.substrate !== undefined && !(change.substrate in substrates)) {
    return refuse('not-found', change.substrate, { label: 'substrate', nearest: Object.keys(substrates) })
  }
  return null
}

/** Makes a site with the usual settings. */
export async function siteNew({ name, lat, lon, zone }: Extract<Said, { command: 'site new' }>, beside: Beside): Promise<Done> {
  const made = await makeSite({ name, lat, lon, zone, change: {} }, 'new', beside)
  return 'ok' in made ? made : told({ command: 'site', site: name, numbers: { site: toJsonObject(made.base) }, logged: made.logged, invented: false })
}

interface Made {
  readonly base: SiteSettings
  /** Ids of its first entry. */
  readonly logged: readonly string[]
}

/**
 * Makes a site, or says why not. Asked for in a channel that is no site's, it takes that channel where none is named; a site's own channel
 * stays that site's. What it was made with is its first entry, so that the record shows who set it and no one changes it unseen.
 */
export async function makeSite({ name, lat, lon, zone, change }: SiteBegun, word: string, { ask, ports, sheet }: Beside): Promise<Made | Done> {
  if (ask.role !== 'supervisor') return refuse('not-allowed', word, { who: 'supervisor' })
  const wrong = unknownChoice(change, ports.sheets.ids, ports.sheets.byId(change.limits ?? sheet.id)?.substrates ?? {})
  if (wrong !== null) return wrong
  const key = { workspace: ask.workspace, site: name }
  const theirs = await takenChannel(change, key, ports.store)
  if (theirs !== null) return theirs
  const free = ask.site === null && (await takenChannel({ channel: ask.channel }, key, ports.store)) === null
  const channel = free ? ask.channel : (ports.ownChannel?.(name) ?? null)
  const base: SiteSettings = { ...defaultSettings, lang: ports.lang, units: ports.units, lat, lon, zone, channel, ...change }
  const taken = refuse('wrong-state', name, { label: 'site', state: 'exists' })
  if (!ask.log) return (await ports.store.view(key)) === null ? { base, logged: [] } : taken
  if (!(await ports.store.createSite(key, base))) return taken
  const appended = await ports.store.append<readonly string[]>(key, ask.at, null, async (view) => {
    const session = await openSession(ask, view)
    await session.log('setting', 'site', base)
    return session.batch(session.ids())
  })
  return { base, logged: appended?.reply ?? [] }
}
