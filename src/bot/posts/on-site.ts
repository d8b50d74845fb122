import type { Instant } from '../../core/instant.js'
import type { States } from '../../core/log/fold.js'
import type { SiteKey, SiteSettings } from '../../core/site.js'
import type { Sheets, SiteView, Weather } from '../ports.js'
import { nobodyAsks } from '../session/nobody.js'
import { remember } from '../session/remember.js'
import { openSession } from '../session/session.js'
import { statesOf } from '../session/states.js'
import { sheetOf } from '../sheet-of.js'
import type { PostOn, SiteRecord, Wanted } from './post.js'

/** What is known of the weather of a site. */
export type WeatherOn = Pick<PostOn, 'forecast' | 'alerts' | 'weatherLacks'>

/** As it was kept: no network stands before a post, and one without alerts only says so. */
export async function weatherOn(weather: Weather, settings: SiteSettings, now: Instant): Promise<WeatherOn> {
  return {
    forecast: await weather.at(settings, now),
    alerts: (await weather.alerts?.(settings, now)) ?? null,
    weatherLacks: weather.lacks?.(settings) ?? null
  }
}

/** What of a site has to be read for a post, and for when. */
export interface Reading extends WeatherOn {
  readonly key: SiteKey
  readonly date: string
  readonly now: Instant
  readonly wants: readonly Wanted[]
}

/** A site as a post needs it, read through one view. */
export async function readSite({ key, date, now, wants, ...weather }: Reading, view: SiteView, sheets: Sheets): Promise<PostOn> {
  const session = await openSession(nobodyAsks(key, now, 'tick'), view)
  const { settings } = session
  const sheet = sheetOf(settings.limits, sheets)
  const memory = await remember(session)
  return { site: key.site, settings, memory, record: await recordOf(view, wants), ...weather, sheet, date, now }
}

async function recordOf(view: SiteView, wants: readonly Wanted[]): Promise<SiteRecord> {
  const all = async <K extends 'kit' | 'welder' | 'void'>(kind: K): Promise<readonly States[K][]> =>
    wants.includes(`${kind}:`) ? statesOf(view, kind) : []
  return { kits: await all('kit'), welders: await all('welder'), voids: await all('void'), head: view.head }
}
