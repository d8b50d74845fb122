import type { SiteSettings } from '../../core/site.js'
import { defaultSettings } from '../../core/site.js'
import { type Beside, type Done, type OnSite, refuse, told } from '../context.js'
import { toJsonObject } from '../json.js'
import type { Said, SiteChange } from '../words/said.js'

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
  await session.log('setting', 'site', said.change, at)
  const settings: SiteSettings = { ...session.settings, ...said.change }
  return told({ command: 'site', numbers: { site: toJsonObject(settings) } })
}

function unknownChoice(change: SiteChange, sheets: readonly string[], substrates: Readonly<Record<string, unknown>>): Done | null {
  if (change.limits !== undefined && !sheets.includes(change.limits))
    return refuse('not-found', change.limits, { label: 'limits', nearest: [...sheets] })
  if (change.substrate !== undefined && !(change.substrate in substrates)) {
    return refuse('not-found', change.substrate, { label: 'substrate', nearest: Object.keys(substrates) })
  }
  return null
}

/** Makes a site; its first settings are what it was made with. */
export async function siteNew(said: Extract<Said, { command: 'site new' }>, { ask, ports }: Beside): Promise<Done> {
  if (ask.role !== 'supervisor') return refuse('not-allowed', 'new', { who: 'supervisor' })
  const base: SiteSettings = {
    ...defaultSettings,
    lang: ports.lang,
    units: ports.units,
    lat: said.lat,
    lon: said.lon,
    zone: said.zone,
    channel: ask.channel
  }
  const key = { workspace: ask.workspace, site: said.name }
  const made = ask.log ? await ports.store.createSite(key, base) : (await ports.store.view(key)) === null
  if (!made) return refuse('wrong-state', said.name, { label: 'site', state: 'exists' })
  return told({ command: 'site', site: said.name, numbers: { site: toJsonObject(base) } })
}
