import type { Instant } from '../../core/instant.js'
import type { SiteKey } from '../../core/site.js'
import type { Chat, Outbox, QueuedPost } from '../chat-ports.js'
import type { Draw, Paper } from '../papers/paper.js'

/** Why a post was not sent, for the log and the supervisor. */
export interface PostNote {
  readonly workspace: string
  readonly key: string
  readonly why: 'stale' | 'no-channel' | 'no-message' | 'no-token' | 'unreadable' | 'refused' | 'given-up' | 'bug'
  readonly detail: string | null
}

export interface DrainPorts {
  readonly outbox: Outbox
  /** Null: there is no chat to post to. Nothing is sent. */
  readonly chat: Chat | null
  /** Where a post without a channel of its own goes; null: nowhere. */
  channelOf(post: QueuedPost): string | null
  /** The time now, as sending takes time. */
  clock(): Instant
  /** Waits so many seconds, for the next message of a channel or the end of a limit; null: leave it for the next tick. */
  readonly wait: ((seconds: number) => Promise<void>) | null
  /** Told to stop: waits for nothing more. */
  readonly stopping?: () => boolean
  readonly note: (note: PostNote, error?: unknown) => void
  /** Pictures are drawn when they are sent, not when they are queued. */
  readonly draw: Draw
  /** The record of a local day of a site, as it stands now; null where nothing was logged. */
  readonly record?: (site: SiteKey, date: string) => Promise<Paper | null>
  /** Which workspaces the service wants left alone until when; kept from tick to tick, where given. */
  readonly pausedUntil?: Map<string, Instant>
}

/**
 * One instance has a post so long: looking and sending must be over well before. Afterwards another may look what became of it. Sending
 * takes at most some 90 s, where every call of it is answered only just in time: what took long before it has the hold renewed.
 */
export const holdS = 120
/** A post that was held longer than this before it is sent has its hold renewed, s. */
export const renewAfterS = 20
