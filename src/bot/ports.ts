import type { Instant } from '../core/instant.js'
import type { LimitsSheet } from '../core/limits/sheet.js'
import type { Draft, Entry, Json } from '../core/log/entry.js'
import type { SiteKey, SiteSettings } from '../core/site.js'
import type { Alerts } from '../core/weather/alert.js'
import type { Forecast } from '../core/weather/forecast.js'
import type { Lang, PersonRole, Units } from './answer.js'

/** An entry with its hash and the exact text that was hashed. */
export interface Kept {
  readonly entry: Entry
  readonly canonical: string
  readonly hash: string
  /** First seq of the append that wrote it: what one message logged stands together. */
  readonly batch: number
  /** Local date of the site at `at`, as it was when the entry was written. */
  readonly day: string
}

export interface Head {
  readonly seq: number
  readonly hash: string
}

/** State of a subject and the seq of the entry that last moved it. */
export interface StateRow {
  readonly subject: string
  readonly state: Json
  readonly seq: number
}

/** What may be read of one site; inside `append` all of it in the transaction that holds the site's lock. */
export interface SiteView {
  readonly key: SiteKey
  readonly head: Head
  /** What the site was made with; later changes are `setting` entries, folded into the state of subject `site`. */
  readonly base: SiteSettings
  /** State of a subject; null when no entry touched it. */
  state(subject: string): Promise<StateRow | null>
  /** The same for several subjects at once, those that no entry touched left out. */
  statesAt(subjects: readonly string[]): Promise<readonly StateRow[]>
  /** Subjects of this site that begin with a prefix (`void:`), with their states, in order of subject. */
  states(prefix: string): Promise<readonly StateRow[]>
  /** All entries that touch a subject, in order of seq. */
  entriesOf(subject: string): Promise<readonly Kept[]>
  /** The entries of a local day, and the undos and corrections of any day that act on their subjects, in order of seq. */
  entriesOfDay(day: string): Promise<readonly Kept[]>
  /** One entry by seq; null when there is none. */
  entry(seq: number): Promise<Kept | null>
  /** The newest entries of an author, newest first. */
  latestOf(author: string, count: number): Promise<readonly Kept[]>
}

/** A limits sheet, forecast or photo that entries refer to by hash: kept once, for ever. */
export interface Keepsake {
  readonly sha256: string
  readonly kind: 'sheet' | 'forecast' | 'photo'
  readonly body: string
}

export interface Post {
  /** Slot key: one post a key, ever. */
  readonly key: string
  readonly site: string
  readonly kind: string
  readonly channel: string | null
  readonly dueAt: Instant
  readonly payload: Json
}

/** Something to keep: its body is made only where it is not kept yet. */
export interface ToKeep extends Omit<Keepsake, 'body'> {
  readonly body: () => string
}

/** New state of a touched subject; `null` state: no entry touches it any more. */
export interface Moved {
  readonly subject: string
  readonly state: Json
}

/** What one append writes. Empty `drafts`: only the claim (if any) is kept. */
export interface Batch<Reply> {
  readonly drafts: readonly (Draft & { readonly day: string; readonly touches: readonly string[] })[]
  readonly moved: readonly Moved[]
  readonly keepsakes: readonly ToKeep[]
  readonly posts: readonly Post[]
  /** Claims that are taken besides, where nobody has them. */
  readonly claims?: readonly string[]
  /** The chat channel that the site has from now on; undefined: as before. */
  readonly channel?: string | null
  readonly reply: Reply
}

export interface Claim {
  /** Delivery id, unique for ever within the workspace. */
  readonly key: string
}

export type Appended<Reply> =
  | { readonly kind: 'done'; readonly reply: Reply; readonly kept: readonly Kept[] }
  /** The claim was taken before: the reply stored then, and no second effect. */
  | { readonly kind: 'repeated'; readonly reply: Reply }

export interface Person {
  readonly lang: Lang | null
  readonly units: Units | null
  readonly role: PersonRole | null
  readonly name: string | null
  /** One direct message a morning for all sites. */
  readonly summary: 'on' | null
}

/** A person with the id that the chat service knows. */
export interface KnownPerson extends Person {
  readonly id: string
}

/** Thrown by every method when the database is away, damaged or full: the outside failing. */
export class StoreError extends Error {
  override readonly name = 'StoreError'
}

/** The store. `append` is the only writer of entries; nothing of it is cached between questions. */
export interface Store {
  /** Names of the sites of a workspace, in order of name. */
  sites(workspace: string): Promise<readonly string[]>
  /** A view for reading only; null when there is no such site. */
  view(key: SiteKey): Promise<SiteView | null>
  /** Makes a site with an empty chain; false when the name is taken. */
  createSite(key: SiteKey, base: SiteSettings): Promise<boolean>
  /**
   * One transaction: locks the site's head, takes the claim, calls `compose` with a view inside the transaction, writes
   * entries, touched subjects, states, keepsakes, posts and the reply, moves the head, commits, flushed to disk.
   * A throw of `compose` rolls everything back. Null when there is no such site.
   */
  append<Reply extends Json>(
    key: SiteKey,
    loggedAt: Instant,
    claim: Claim | null,
    compose: (view: SiteView) => Promise<Batch<Reply>>
  ): Promise<Appended<Reply> | null>
  /** All entries of a site in order of seq, in slices, for verify, export and move. */
  entries(key: SiteKey, afterSeq: number, count: number): Promise<readonly Kept[]>
  keepsake(workspace: string, sha256: string): Promise<Keepsake | null>
  person(workspace: string, id: string): Promise<Person>
  savePerson(workspace: string, id: string, change: Partial<Person>): Promise<void>
  /** What was kept with a claim of a workspace (a delivery's reply); null when nobody took it. */
  keptReply(workspace: string, claim: string): Promise<Json | null>
  /** Posts of a workspace that were given up since an instant, newest first: site, kind and slot key. */
  givenUp(workspace: string, dueSince: Instant, count: number): Promise<readonly { site: string; kind: string; key: string }[]>
  /** The supervisors of a workspace, in order of id. */
  supervisors(workspace: string): Promise<readonly KnownPerson[]>
  /** Is there a supervisor in the workspace yet? */
  hasSupervisor(workspace: string): Promise<boolean>
  /** Makes a person the supervisor of a workspace that has none, in one step over all servers; false: somebody else is. */
  claimSupervisor(workspace: string, id: string): Promise<boolean>
  /** Gives a person a role, in one step over all servers; false, and nothing changed: nobody would be supervisor any more. */
  nameRole(workspace: string, id: string, role: PersonRole): Promise<boolean>
  /** The site whose channel this is; null when it is nobody's. */
  siteOfChannel(workspace: string, channel: string): Promise<string | null>
  close(): Promise<void>
}

/** Weather for a place. No network stands before a reply: answers come from what was fetched before. */
export interface Weather {
  /** The newest forecast kept for the place as of an instant, with the hours before it that were kept; null when there is none. */
  at(place: { lat: number; lon: number; zone: string; invented: boolean }, now: Instant): Promise<Forecast | null>
  /** What the services that warn of weather say for the place, as it was kept; null, or no such function: none covers it. */
  alerts?(place: { lat: number; lon: number; invented: boolean }, now: Instant): Promise<Alerts | null>
  /** Name of the setting for want of which no service is asked for the place; null, or no such function: none is missing. */
  lacks?(place: { invented: boolean }): string | null
}

/** The limits sheets in use. */
export interface Sheets {
  /** By id; null when there is none of that id. */
  byId(id: string): LimitsSheet | null
  readonly ids: readonly string[]
}
