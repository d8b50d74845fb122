import type { Talk } from '../../../bot/talk/talk.js'
import type { Clients } from '../clients.js'
import type { Origin } from '../delivery.js'
import type { SlackLog } from '../log.js'
import type { Loose } from '../loose.js'
import type { Out } from '../out.js'
import type { Seen } from '../seen.js'
import type { Work } from '../work.js'

/** What every handler has at hand. */
export interface Context {
  readonly talk: Talk
  readonly origin: Origin
  readonly clients: Clients
  readonly out: Out
  readonly seen: Seen
  readonly work: Work
  readonly log: SlackLog
  readonly botUserId: string
  /** Milliseconds after which the reply says that the answer will follow. */
  readonly answerMs: number
  /** Who has looked at their home since the start, as `WORKSPACE USER`: theirs is kept fresh. */
  readonly homes: Set<string>
  /** The service took the app's token away. */
  readonly revoked: () => void
}

/** Ends the service's wait, with a reply or without. */
export type Ack = (reply?: Loose) => Promise<void>
