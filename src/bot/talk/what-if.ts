import type { KnownBlock } from '@slack/types'
import { DateTime } from 'luxon'
import { daysOn, type Instant, localDate } from '../../core/instant.js'
import { firstInstantAt } from '../../core/schedule.js'
import type { SiteSettings } from '../../core/site.js'
import type { Lang, Units } from '../answer.js'
import type { Ask } from '../ask.js'
import { type Asked, putInPlace } from '../asked.js'
import type { Ports } from '../context.js'
import { replyOnly } from '../handle.js'
import { speakMorning } from '../posts/morning.js'
import { readSite, weatherOn } from '../posts/on-site.js'

/** What is asked: which site, at which instant, in whose words. */
export interface WhatIfAsked {
  readonly workspace: string
  readonly site: string
  readonly user: string
  readonly at: Instant
  readonly lang: Lang | null
  readonly units: Units | null
}

interface Supposed {
  readonly kind: 'spray' | 'day' | 'morning'
  readonly text: string
  readonly blocks: readonly KnownBlock[]
}

/** What would be said at an instant, and the local week around it: `from` Monday 00:00 to before `to`. */
export interface WhatIf {
  readonly at: Instant
  readonly from: Instant
  readonly to: Instant
  readonly zone: string
  /** When the next morning post would be due; null: not within the week. */
  readonly nextMorning: Instant | null
  readonly told: readonly Supposed[]
}

/**
 * What `spray`, `day` and the morning post would say at an instant, by the engine that answers everybody, with what is logged
 * so far. Nothing is logged, claimed, posted or drawn. Null where there is no such site, or its weather is not invented: of a
 * real one nobody should believe a supposition.
 */
export async function whatIf(asked: WhatIfAsked, ports: Ports): Promise<WhatIf | null> {
  const place = await putInPlace(askOf(asked, ''), ports)
  if (place.place === null || !place.place.settings.invented) return null
  const { settings } = place.place
  const told = [await answered('spray', asked, ports), await answered('day', asked, ports), await posted(asked, place, settings, ports)]
  const monday = DateTime.fromSeconds(asked.at, { zone: settings.zone }).startOf('week')
  const to = monday.plus({ weeks: 1 }).toSeconds()
  return { at: asked.at, from: monday.toSeconds(), to, zone: settings.zone, nextMorning: nextMorning(asked.at, settings, to), told }
}

function askOf({ workspace, site, user, at, lang, units }: WhatIfAsked, text: string): Ask & { readonly log: false } {
  return { text, at, workspace, site, user, lang, units, channel: null, role: 'crew', via: 'room', log: false, claim: null }
}

async function answered(kind: 'spray' | 'day', asked: WhatIfAsked, ports: Ports): Promise<Supposed> {
  const { text, blocks } = await replyOnly(askOf(asked, kind), ports)
  return { kind, text, blocks }
}

async function posted(asked: WhatIfAsked, { how }: Asked, settings: SiteSettings, ports: Ports): Promise<Supposed> {
  const { workspace, site, at } = asked
  const key = { workspace, site }
  const view = await ports.store.view(key)
  if (view === null) throw new Error('the site went away while it was asked about')
  const seen = await weatherOn(ports.weather, settings, at)
  const on = await readSite({ key, date: localDate(at, settings.zone), now: at, ...seen, wants: [] }, view, ports.sheets)
  const { text, blocks } = speakMorning(on, how)
  return { kind: 'morning', text, blocks }
}

function nextMorning(at: Instant, { zone, morning }: SiteSettings, before: Instant): Instant | null {
  const today = localDate(at, zone)
  const due = [today, daysOn(today, 1)].map((date) => firstInstantAt(date, morning, zone))
  return due.find((one) => one !== null && one > at && one < before) ?? null
}
