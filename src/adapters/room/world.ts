import { type Changes, createChanges } from './changes.js'
import { channelsOf, type RoomChannel } from './channels.js'
import { createDeliver, type Deliver } from './deliver.js'
import { createFiles, type Files } from './files.js'
import { fileJournal, type Journal, memoryJournal } from './journal.js'
import { createMessages, type Messages } from './messages.js'
import { createModals, type Modals } from './modals.js'
import { createRate } from './rate.js'
import { type Settings, settingsOf } from './settings.js'
import { createHooks, createTriggers, type Hooks, type Triggers } from './tickets.js'
import type { Aside, RoomOptions } from './types.js'
import { langOf, type RoomLang } from './words/index.js'

/** Everything that the room knows; its parts do not know each other. */
export interface World {
  readonly settings: Settings
  readonly changes: Changes
  readonly journal: Journal
  readonly messages: Messages
  readonly files: Files
  readonly modals: Modals
  readonly triggers: Triggers
  readonly hooks: Hooks
  readonly deliver: Deliver
  /** Seconds to wait before a post to a channel, or null. */
  readonly rate: (channel: string) => number | null
  readonly channels: () => Promise<readonly RoomChannel[]>
  /** Language that a person last chose in the page: the locale the service would give. */
  readonly asides: Map<string, Aside>
  /** Tickets of uploads that are under way. */
  readonly uploads: Map<string, { readonly name: string; readonly alt: string | null; bytes: Buffer | null }>
  /** Ends what waits: retries and late files. */
  readonly timers: Set<NodeJS.Timeout>
  /** Deliveries under way: the room closes after them. */
  readonly running: Set<Promise<void>>
}

export function createWorld(options: RoomOptions): World {
  const settings = settingsOf(options)
  const { now, timing } = settings
  const journal = settings.folder === null ? memoryJournal() : fileJournal(settings.folder, settings.log)
  const changes = createChanges()
  return {
    settings,
    changes,
    journal,
    messages: createMessages(journal, changes, now),
    files: createFiles(journal, now, timing.fileMs),
    modals: createModals(changes),
    triggers: createTriggers(now, timing.triggerMs),
    hooks: createHooks(now, timing.hookMs, timing.hookUses),
    deliver: createDeliver(settings),
    rate: createRate(now, timing.postsPerS, timing.postBurst),
    channels: async () => channelsOf(await settings.sites()),
    asides: new Map(),
    uploads: new Map(),
    timers: new Set(),
    running: new Set()
  }
}

/** The language in which the room itself speaks to a person: that of the page which person used last. */
export function roomLang({ asides, settings }: World, aside: Aside | null, user: string | null = null): RoomLang {
  return langOf(aside?.lang ?? (user === null ? null : asides.get(user)?.lang), settings.lang)
}

/** Runs later, unless the room has closed by then. */
export function later(world: World, ms: number, run: () => void): void {
  const timer = setTimeout(() => {
    world.timers.delete(timer)
    run()
  }, ms)
  world.timers.add(timer)
}

/** Lets something run by itself: what goes wrong in it is logged, and the room waits for it when it closes. */
export function track(world: World, work: Promise<void>): void {
  const tracked = work
    .catch((error: unknown) =>
      world.settings.log('the room failed', { error: error instanceof Error ? (error.stack ?? error.message) : String(error) })
    )
    .finally(() => world.running.delete(tracked))
  world.running.add(tracked)
}
