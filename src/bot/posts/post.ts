import type { Memory } from '../../core/gather/memory.js'
import type { Instant } from '../../core/instant.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import type { SiteSettings } from '../../core/site.js'
import type { Forecast } from '../../core/weather/forecast.js'
import type { Spoken } from '../answer.js'
import type { Paper } from '../papers/paper.js'

/** A site at the time of a post, as far as any post needs it. */
export interface PostOn {
  readonly site: string
  readonly settings: SiteSettings
  readonly memory: Memory
  readonly forecast: Forecast | null
  readonly sheet: LimitsSheet
  /** Local date of the slot, YYYY-MM-DD. */
  readonly date: string
  readonly now: Instant
}

/** One kind of scheduled post. */
export interface Post {
  /** Local time HH:MM at which it is due. */
  time(settings: SiteSettings): string
  /** In the site's language and units. Pure: the same site gives the same bytes. */
  speak(on: PostOn): Written
}

/** A post in words, with what is drawn when it is sent. */
export interface Written extends Spoken {
  readonly papers: readonly Paper[]
}
