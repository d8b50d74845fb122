import type { Memory } from '../../core/gather/memory.js'
import type { Instant } from '../../core/instant.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import type { KitState } from '../../core/log/states/kit.js'
import type { VoidState } from '../../core/log/states/void.js'
import type { WelderState } from '../../core/log/states/welder.js'
import type { SiteSettings } from '../../core/site.js'
import type { Alerts } from '../../core/weather/alert.js'
import type { Forecast } from '../../core/weather/forecast.js'
import type { Spoken } from '../answer.js'
import type { Paper } from '../papers/paper.js'
import type { Head } from '../ports.js'
import type { Brief } from './summary.js'

/** What a post may need of the log beside the memory of the rules, by prefix of subject. */
export type Wanted = 'kit:' | 'welder:' | 'void:'

/** All kits, welders and voids of a site, each list empty where the kind of post does not want it. */
export interface SiteRecord {
  readonly kits: readonly KitState[]
  readonly welders: readonly WelderState[]
  readonly voids: readonly VoidState[]
  /** Where the chain of the site ends. */
  readonly head: Head
}

/** A site at the time of a post, as far as any post needs it. */
export interface PostOn {
  readonly site: string
  readonly settings: SiteSettings
  readonly memory: Memory
  readonly record: SiteRecord
  readonly forecast: Forecast | null
  /** Null: no service that warns covers the site. */
  readonly alerts: Alerts | null
  /** Name of the setting for want of which there is no forecast; null: none is missing. */
  readonly weatherLacks: string | null
  readonly sheet: LimitsSheet
  /** Local date of the slot, YYYY-MM-DD. */
  readonly date: string
  readonly now: Instant
}

/** One kind of post that is due at a time of day. */
export interface Post {
  /** Local time HH:MM at which it is due. */
  time(settings: SiteSettings): string
  readonly wants: readonly Wanted[]
  /** In the site's language and units. Pure: the same site gives the same bytes. */
  speak(on: PostOn): Written
}

/** A post in words, with what is drawn when it is sent. */
export interface Written extends Spoken {
  readonly papers: readonly Paper[]
  /** What a summary says of it. */
  readonly brief?: Brief
  /** Local date of the day record that goes with it: made when the post is sent, since photos may be in it. */
  readonly recordOf?: string
}
