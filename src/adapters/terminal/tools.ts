import type { Units } from '../../bot/answer.js'
import type { Ports } from '../../bot/context.js'
import type { Sheets, Store, Weather } from '../../bot/ports.js'
import type { TickPorts } from '../../bot/posts/tick-ports.js'
import type { Chains } from '../../bot/verify.js'
import type { OutlineSaid } from '../../bot/words/said.js'
import type { Instant } from '../../core/instant.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import type { Terminal } from './io.js'

/** The store with what verify, export and forget need besides. */
export interface OpenStore extends Store, Chains {
  forget(workspace: string, id: string, successor: string | null): Promise<boolean | null>
}

/** What is done to a whole store. Each throws a StoreError with a clear sentence. */
export interface Upkeep {
  /** Steps of migration that were done before the store was opened, and are done now. */
  migrated(store: OpenStore): { readonly database: string; readonly before: number; readonly after: number }
  /** Into a new file; how many rows it was. */
  backup(store: OpenStore, file: string): Promise<number>
  /** Into an empty store, all or nothing; how many rows it was. */
  restore(store: OpenStore, file: string): Promise<number>
  /** From the file of a folder (null: of the settings), which no server uses, into an empty PostgreSQL: the new store, open. */
  move(folder: string | null, url: string): Promise<{ readonly store: OpenStore; readonly rows: number }>
}

/** What main gives the subcommands: they touch nothing else. */
export interface Tools {
  readonly terminal: Terminal
  readonly defaults: Pick<Ports, 'lang' | 'units' | 'report' | 'draw'>
  /** Opens the store of the settings, or of another folder. Throws a StoreError with a clear sentence. */
  openStore(folder: string | null): Promise<OpenStore>
  /** `sample`, `none`, `live` or a file; null: what the settings say. Throws a Stop for a bad file. */
  weather(choice: string | null, issuedAt: Instant, store: OpenStore): Promise<Weather>
  /** The outline in a file, its bare numbers in the units of the person. Throws a Stop that names what is wrong and where. */
  outline(file: string, units: Units): Promise<OutlineSaid>
  readonly upkeep: Upkeep
  /** The sheets in use; with a file, that sheet for everything. Throws a Stop naming every problem. */
  sheets(file: string | null): Sheets
  /** A resolved sheet from what is kept by its hash; null when it is no sheet. */
  resolveSheet(raw: unknown): LimitsSheet | null
  /** The chat service's manifest for deliveries to an https address, as YAML. */
  manifest(url: string): Promise<string>
  /** What a tick needs beside the store: the outbox, the chat if there is one, the clock of the tick. */
  posting(store: OpenStore, at: Instant): Pick<TickPorts, 'slots' | 'drain' | 'channelOf'>
}

export type Subcommand = (args: readonly string[], tools: Tools) => Promise<number>
