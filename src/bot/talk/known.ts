import { emptySite } from '../../core/log/states/site.js'
import type { SiteSettings } from '../../core/site.js'
import type { Lang, Units } from '../answer.js'
import type { Ports } from '../context.js'
import type { Known, KnownWelder } from '../forms/parts/known.js'
import type { SiteView } from '../ports.js'
import { settingsOf } from '../session/session.js'
import { stateOf, statesOf } from '../session/states.js'
import { sheetOf } from '../sheet-of.js'

/** Who opens a form, where. */
export interface Opening {
  readonly workspace: string
  readonly site: string | null
  readonly channel: string | null
  readonly lang: Lang
  readonly units: Units
}

/** What a form may be filled with: a few rows of the site, nothing but reading. */
export async function knownFor({ workspace, site, channel, lang, units }: Opening, { store, sheets }: Ports): Promise<Known> {
  const view = site === null ? null : await store.view({ workspace, site })
  const settings = view === null ? null : await settingsOf(view)
  const sheet = sheetOf(settings?.limits ?? null, sheets)
  const about = view === null ? nothing : await ofSite(view)
  return {
    lang,
    units,
    ...about,
    thicknessMm: sheet.sheet.thicknessMm,
    settings,
    zone: settings?.zone ?? (await someZone(workspace, store)),
    limits: sheets.ids,
    substrates: Object.keys(sheet.substrates),
    channelFree: channel !== null && (await store.siteOfChannel(workspace, channel)) === null
  }
}

const nothing: Pick<Known, 'kit' | 'welders' | 'compatibility'> = { kit: null, welders: [], compatibility: null }

async function ofSite(view: SiteView): Promise<typeof nothing> {
  const { kit, compatibility } = (await stateOf(view, 'site')) ?? emptySite
  const last = kit === null ? null : await stateOf(view, `kit:${kit}`)
  return {
    kit: last === null ? null : { name: last.name, lot: last.lot, expiresOn: last.expiresOn?.value ?? null },
    welders: await weldersOf(view),
    compatibility: compatibility?.value ?? null
  }
}

async function weldersOf(view: SiteView): Promise<readonly KnownWelder[]> {
  const judged = (await statesOf(view, 'welder'))
    .filter(({ coupon }) => coupon !== null)
    .sort((a, b) => (b.coupon?.at ?? 0) - (a.coupon?.at ?? 0) || (a.name < b.name ? -1 : 1))
  return judged.map(({ name, coupon }) => {
    const { setC = null, speedMMin = null, thicknessMm = null, by = null } = coupon?.value ?? {}
    return { name, setC, speedMMin, thicknessMm, by }
  })
}

/** A new site is mostly near one that is there: the zone of the first that is not invented. */
async function someZone(workspace: string, store: Ports['store']): Promise<string | null> {
  for (const site of (await store.sites(workspace)).slice(0, 5)) {
    const view = await store.view({ workspace, site })
    const settings: SiteSettings | null = view === null ? null : await settingsOf(view)
    if (settings !== null && !settings.invented) return settings.zone
  }
  return null
}
