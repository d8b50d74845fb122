import type { Kysely } from 'kysely'

/**
 * Tables as they are in the newest migration. Columns are text, whole numbers, or null, and nothing else, so that SQLite and
 * PostgreSQL give back the same values. Instants are epoch seconds, JSON is text. Every row has its workspace.
 */
export interface Tables {
  readonly sites: SiteTable
  readonly entries: EntryTable
  readonly touches: TouchTable
  readonly states: StateTable
  readonly claims: ClaimTable
  readonly outbox: OutboxTable
  readonly keepsakes: KeepsakeTable
  readonly people: PeopleTable
  readonly forecasts: ForecastTable
  readonly hours: HourTable
  readonly installations: InstallationTable
  readonly alerts: AlertTable
  readonly turns: TurnTable
}

export interface SiteTable {
  readonly workspace: string
  readonly site: string
  /** JSON: settings it was made with. */
  readonly base: string
  /** Chat channel it has now; the setting itself is in the log. */
  readonly channel: string | null
  /** The head of its chain. */
  readonly seq: number
  readonly hash: string
}

export interface EntryTable {
  readonly workspace: string
  readonly site: string
  readonly seq: number
  readonly hash: string
  /** Exactly the text that was hashed. */
  readonly canonical: string
  readonly at: number
  readonly logged_at: number
  readonly author: string
  readonly type: string
  readonly subject: string
  readonly batch: number
  readonly day: string
}

export interface TouchTable {
  readonly workspace: string
  readonly site: string
  readonly subject: string
  readonly seq: number
}

export interface StateTable {
  readonly workspace: string
  readonly site: string
  readonly subject: string
  /** JSON. */
  readonly state: string
  readonly seq: number
}

export interface ClaimTable {
  readonly workspace: string
  readonly key: string
  /** JSON. */
  readonly reply: string
  readonly created_at: number
}

/** `queued` → `sending` → `sent`, `unknown` (may have been sent), `dead` (given up) or `skipped` (stale). */
export type PostState = 'queued' | 'sending' | 'sent' | 'unknown' | 'dead' | 'skipped'

export interface OutboxTable {
  readonly workspace: string
  readonly key: string
  readonly site: string
  readonly kind: string
  readonly channel: string | null
  readonly due_at: number
  /** JSON. */
  readonly payload: string
  readonly state: PostState
  readonly attempts: number
  readonly next_at: number
  /** A sender has it until then; null: nobody has it. */
  readonly claimed_until: number | null
  /** The chat service's id of the message; null: none known. */
  readonly message_ts: string | null
  readonly created_at: number
}

export interface KeepsakeTable {
  readonly workspace: string
  readonly sha256: string
  readonly kind: string
  readonly body: string
}

export interface PeopleTable {
  readonly workspace: string
  readonly person: string
  readonly name: string | null
  readonly lang: string | null
  readonly units: string | null
  readonly role: string | null
  /** `on`: one message a morning for all sites. */
  readonly summary: string | null
}

export interface ForecastTable {
  readonly workspace: string
  readonly cell: string
  readonly source: string
  readonly fetched_at: number
  readonly issued_at: number
  readonly expires_at: number
  readonly last_modified: string | null
  /** JSON. */
  readonly forecast: string
}

export interface HourTable {
  readonly workspace: string
  readonly cell: string
  readonly at: number
  /** JSON. */
  readonly hour: string
}

export interface AlertTable {
  readonly workspace: string
  readonly cell: string
  readonly source: string
  readonly fetched_at: number
  readonly expires_at: number
  readonly note: string | null
  /** JSON; `null`: the source does not cover the place. */
  readonly alerts: string
}

export interface TurnTable {
  readonly workspace: string
  readonly what: string
  readonly until: number
}

export interface InstallationTable {
  readonly workspace: string
  /** Token and ids of the bot, sealed (`sealing.ts`). */
  readonly sealed: string
  readonly installed_at: number
}

export type Kind = 'sqlite' | 'postgres'

/** What the queries need: an open database, or a transaction of it. */
export type Queries = Kysely<Tables>

export interface Migrated {
  readonly before: number
  readonly after: number
}

/**
 * An open database. Reads outside of a transaction have connections of their own, so that what an append reads from elsewhere
 * while it holds its transaction (the weather) never waits for that same transaction.
 */
export interface Database {
  readonly kind: Kind
  readonly write: Queries
  readonly read: Queries
  /** Steps of migration that were done before it was opened, and are done now. */
  readonly migrated: Migrated
  close(): Promise<void>
}
