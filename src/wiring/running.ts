import { createMetrics, type Metrics } from '../adapters/http/metrics.js'
import type { Installations } from '../adapters/store/installations.js'
import { outboxTable } from '../adapters/store/outbox-table.js'
import type { OpenStore } from '../adapters/terminal/tools.js'
import type { Outbox, Slots } from '../bot/chat-ports.js'
import type { Ports } from '../bot/context.js'
import type { Weather } from '../bot/ports.js'
import type { Looked } from '../bot/posts/watch-tick.js'
import { settingsOf } from '../bot/session/session.js'
import type { Config } from '../config.js'
import { engineVersion } from '../core/engine.js'
import type { Instant } from '../core/instant.js'
import { bookOf, installedOnly } from './installed.js'
import { measuredStore } from './measured.js'
import { createReadiness, type Readiness } from './readiness.js'
import { readings } from './readings.js'
import type { Wired } from './tools.js'
import { choiceOf, type Live, liveFrom, weatherOf } from './weather.js'

/** The workspace of terminal and local room. */
export const local = 'local'

/** Everything of the running bot that the parts below share. */
export interface Running {
  readonly config: Config
  readonly wired: Wired
  readonly store: OpenStore
  /** Slots of the sites that are to be posted to. */
  readonly slots: Slots
  readonly outbox: Outbox & Slots
  /** Null: one workspace, or the local room. */
  readonly book: Installations | null
  readonly ports: Ports
  readonly now: () => Instant
  readonly live: Live
  readonly metrics: Metrics
  readonly readiness: Readiness
  /** Set when the chat is open. */
  readonly chatReady: { is: () => boolean }
  /** Kept from tick to tick: which workspaces the service wants left alone, which sites the watch looked at. */
  readonly pausedUntil: Map<string, Instant>
  readonly looked: Looked
}

/** Opens the store and what stands around it. */
export async function prepare(config: Config, wired: Wired): Promise<Running> {
  const opened = await wired.openStore(null)
  const database = wired.databaseOf(opened)
  const now = wired.terminal.now
  const outbox = outboxTable(database)
  const chatReady = { is: () => false }
  const readiness = createReadiness({ now, chat: () => chatReady.is(), look: () => opened.sites(local) })
  const metrics = createMetrics(engineVersion, readings(database, readiness.health, now))
  const store = measuredStore(opened, metrics)
  const live = liveFrom(
    config,
    database,
    (what, message) => wired.log.warn(what, message),
    (what, source, how) => {
      metrics.weather(what === 'alerts' ? `${source}-alerts` : source, how)
      // Answers hang on forecasts; alerts are said to be not known.
      if (what === 'forecast') readiness.asked(how)
    }
  )
  const report: Ports['report'] = (error, context) => {
    metrics.bug()
    return wired.defaults.report(error, context)
  }
  const weather: Weather = weatherOf(choiceOf(config), () => live, now())
  const book = config.slack?.kind === 'many' ? await bookOf(database, config.slack.tokenKeys, wired.log) : null
  return {
    config,
    wired,
    store,
    slots: book === null ? outbox : installedOnly(outbox, book),
    outbox,
    book,
    ports: { ...wired.defaults, report, store, weather, sheets: wired.sheets(null) },
    now,
    live,
    metrics,
    readiness,
    chatReady,
    pausedUntil: new Map(),
    looked: new Map()
  }
}

/** The sites that are to be posted to, with what is set for them. */
export async function places({ slots }: Running) {
  const kept = await slots.keptSites()
  return Promise.all(kept.map(async ({ key, base, state }) => ({ key, settings: await settingsOf({ base, state: async () => state }) })))
}
