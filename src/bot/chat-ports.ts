import type { KnownBlock } from '@slack/types'
import type { Instant } from '../core/instant.js'
import type { Json } from '../core/log/entry.js'
import type { SiteKey, SiteSettings } from '../core/site.js'
import type { DrawnFile } from './papers/paper.js'
import type { StateRow } from './ports.js'

/** A message for a channel, from the outbox. `key` is its slot key: it travels as metadata, so that the post can be looked up. */
export interface Outgoing {
  readonly workspace: string
  readonly channel: string
  readonly key: string
  readonly text: string
  readonly blocks: readonly KnownBlock[]
  /** Shown in the message: they go up first, so that the message alone counts. */
  readonly files: readonly DrawnFile[]
}

/** What became of a send. Of `unknown` fate: it may be there or not (time-out, 5xx, half an answer). */
export type Sent =
  | { readonly kind: 'sent'; readonly ts: string }
  | { readonly kind: 'later'; readonly afterS: number }
  | { readonly kind: 'unknown' }
  /** Never to be sent as it is: channel gone, token revoked, blocks refused. */
  | { readonly kind: 'refused'; readonly code: string }

export type Found =
  | { readonly kind: 'found'; readonly ts: string }
  | { readonly kind: 'absent' }
  /** The service gave no answer, or wants to be asked later: nothing is known yet. */
  | { readonly kind: 'later'; readonly afterS: number }
  /** A clear no: it never will be read. */
  | { readonly kind: 'unreadable' }

/** The chat service, as far as posts need it. Never throws for the service's failings. */
export interface Chat {
  post(message: Outgoing): Promise<Sent>
  /** Changes a message of the bot. Done twice it is done once. */
  edit(message: Outgoing, ts: string): Promise<Sent>
  /** Looks in the channel's history since an instant for a message with this slot key. */
  find(workspace: string, channel: string, key: string, since: Instant): Promise<Found>
}

export type PostState = 'queued' | 'sending' | 'sent' | 'unknown' | 'dead' | 'skipped'

export interface QueuedPost {
  readonly workspace: string
  readonly key: string
  readonly site: string
  readonly kind: string
  readonly channel: string | null
  readonly dueAt: Instant
  readonly payload: Json
  readonly state: PostState
  readonly attempts: number
  /** The chat service's id of the message; null: none known. */
  readonly messageTs: string | null
  readonly createdAt: Instant
}

/** The outbox in the store. Posts come into it only through `Store.append` (its `posts`), in the transaction that claims the slot. */
export interface Outbox {
  /**
   * Takes up to `count` posts that may be sent now, and holds them until an instant: no other instance gets them meanwhile.
   * In order of time, and of a channel only the first that is not ended. One whose hold ran out comes as `unknown`: whoever
   * held it may have sent it. A hold or a wait that ends much too late is one of before the clock went back, and counts as run out.
   * None of the workspaces in `except`.
   */
  take(now: Instant, holdUntil: Instant, count: number, except?: readonly string[]): Promise<readonly QueuedPost[]>
  /** Holds a post that is held until `from` for longer. False where it is not held so any more: another instance may have it. */
  renew(workspace: string, key: string, from: Instant, until: Instant): Promise<boolean>
  /** Puts a post back or ends it. What was sent stays sent. */
  settle(
    workspace: string,
    key: string,
    change: { readonly state: PostState; readonly nextAt: Instant; readonly attempts: number; readonly messageTs: string | null }
  ): Promise<void>
  /** Posts by slot key, for looking. */
  post(workspace: string, key: string): Promise<QueuedPost | null>
  /** Ends every queued post that was due before an instant as skipped; which ones. */
  skipQueued(dueBefore: Instant): Promise<readonly Pick<QueuedPost, 'workspace' | 'key' | 'site' | 'kind'>[]>
  /** Posts due since an instant that were given up and that nobody was told of (claim `dead/KEY`), by workspace, time and key. */
  untold(dueSince: Instant, count: number): Promise<readonly QueuedPost[]>
}

/** A site as the store keeps it: what it was made with and the folded state of subject `site` (`settingsOf` reads them). */
export interface KeptSite {
  readonly key: SiteKey
  readonly base: SiteSettings
  readonly state: StateRow | null
  /** Of its newest entry. */
  readonly seq: number
}

/** What a tick looks at before it writes anything: all sites at once, and which slots were claimed before. */
export interface Slots {
  keptSites(): Promise<readonly KeptSite[]>
  /** Those of some claims that were taken. */
  claimed(workspace: string, keys: readonly string[]): Promise<ReadonlySet<string>>
  /** What was kept with some claims; those not taken are left out. */
  kept(workspace: string, claims: readonly string[]): Promise<ReadonlyMap<string, Json>>
  /** What was kept with the last in order of the claims that begin with a prefix; null when none does. */
  lastClaim(workspace: string, prefix: string): Promise<Json | null>
}
