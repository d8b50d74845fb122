import { fromIso, type Instant, localTime } from '../../../core/instant.js'
import type { LimitsSheet } from '../../../core/limits/sheet.js'
import type { States } from '../../../core/log/fold.js'
import type { LoggedLine } from '../../../core/record/day-log.js'
import type { SiteSettings } from '../../../core/site.js'
import type { Paper } from '../paper.js'

/** A photo that the log names: its bytes, or null where they are not kept here. */
export interface KeptPhoto {
  readonly entry: string
  readonly at: string
  readonly subject: string
  readonly mime: string
  readonly base64: string | null
}

/** Everything that the record of a day is made of, before it is put into words. */
export interface Gathered {
  readonly site: string
  readonly settings: SiteSettings
  readonly sheet: LimitsSheet
  /** Local date, YYYY-MM-DD. */
  readonly date: string
  readonly now: Instant
  readonly lines: readonly LoggedLine[]
  /** As they stand at the end of the day, or now while it lasts. */
  readonly day: States['day']
  readonly yesterday: States['day']
  /** The end of the day, or now while it lasts. */
  readonly until: Instant
  readonly siteState: States['site']
  readonly voids: readonly States['void'][]
  /** Of the whole site: metres stay on hold from day to day. */
  readonly welders: readonly States['welder'][]
  /** What is said of people by their ids. */
  readonly names: ReadonlyMap<string, string>
  readonly photos: readonly KeptPhoto[]
  readonly picture: { readonly paper: Paper<'day'>; readonly knownAt: Instant } | null
  /** SITE:SEQ:HASH of the newest entry of the whole log; null for an empty one. */
  readonly anchor: string | null
}

/** The local time of an entry, HH:MM. */
export function timeOf(iso: string, zone: string): string {
  const at = fromIso(iso)
  return at === null ? iso : localTime(at, zone)
}
