import type { Talk } from '../../../bot/talk/talk.js'
import type { Origin } from '../delivery.js'
import type { SlackLog } from '../log.js'
import type { Loose } from '../loose.js'
import type { Out } from '../out.js'
import type { Seen } from '../seen.js'
import type { Work } from '../work.js'
import type { Workspaces } from '../workspaces.js'

/** What every handler has at hand. */
export interface Context {
  readonly talk: Talk
  readonly origin: Origin
  readonly workspaces: Workspaces
  readonly out: Out
  readonly seen: Seen
  readonly work: Work
  readonly log: SlackLog
  readonly fetch: typeof globalThis.fetch
  /** Where the service's API is. */
  readonly apiUrl: string
  /** Milliseconds after which the reply says that the answer will follow. */
  readonly answerMs: number
  /** Who has looked at their home since the start, as `WORKSPACE USER`: theirs is kept fresh. */
  readonly homes: Set<string>
}

/** Ends the service's wait, with a reply or without. */
export type Ack = (reply?: Loose) => Promise<void>
