import type { SiteKey, SiteSettings } from '../../core/site.js'
import type { Slots } from '../chat-ports.js'
import type { Ports } from '../context.js'
import type { DrainPorts } from '../outbox/drain-ports.js'
import type { Speaker } from './speaker.js'
import type { Looked } from './watch-tick.js'

export interface TickPorts extends Pick<Ports, 'store' | 'weather' | 'sheets' | 'report' | 'lang' | 'units'> {
  readonly slots: Slots
  /** What sends; where there is no chat it only skips what is stale. */
  readonly drain: Omit<DrainPorts, 'channelOf'>
  /** Where the posts of a site go; null: nowhere yet. */
  channelOf(site: SiteKey, settings: SiteSettings): string | null
  /**
   * Between one site and the next: lets whatever else waits have its turn, since thousands of sites take long and an embedded store
   * answers at once. False: begin nothing more, the next tick goes on. Not given: nothing else waits.
   */
  readonly goOn?: () => Promise<boolean>
  /** Begins to put posts into words on other processors, when many are due; null or not given: there is none to spare. */
  readonly speaker?: () => Speaker | null
  /** Which sites the watch looked at when: not given, it looks at all of them. */
  readonly looked?: Looked
}
