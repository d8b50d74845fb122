import { LimitsError, onlySheet, readSheets, resolveKept } from '../adapters/limits/files.js'
import { createLog, reportBug } from '../adapters/log.js'
import { openSqlite } from '../adapters/store/open-sqlite.js'
import { outboxTable } from '../adapters/store/outbox-table.js'
import type { Database } from '../adapters/store/schema.js'
import { createStore } from '../adapters/store/store.js'
import { Stop, type Terminal } from '../adapters/terminal/io.js'
import type { OpenStore, Tools } from '../adapters/terminal/tools.js'
import type { Config } from '../config.js'
import { drawElsewhere } from './paper-threads.js'
import { draw } from './papers.js'
import { choiceOf, type Live, liveFrom, refreshedFirst, weatherOf } from './weather.js'

/** What the subcommands get, with what the server needs besides. */
export interface Wired extends Tools {
  readonly log: ReturnType<typeof createLog>
  databaseOf(store: OpenStore): Database
}

/** What most starts do not need is loaded when it is first asked for: a start is little else than loading. */
const later = {
  backups: () => import('../adapters/store/backup-file.js'),
  manifest: () => import('../adapters/slack/manifest-yaml.js'),
  move: () => import('../adapters/store/move.js'),
  outline: () => import('./outline.js'),
  postgres: () => import('../adapters/store/open-postgres.js')
}

/** `server`: this process is the one server of its SQLite file. */
export function wire(config: Config, terminal: Terminal, server: boolean): Wired {
  const log = createLog(config.LOG_LEVEL)
  const folder = config.SEAMHAND_LIMITS ?? null
  const standard = orStop(() => readSheets(folder))
  const databases = new WeakMap<OpenStore, Database>()
  const databaseOf = (store: OpenStore): Database => {
    const database = databases.get(store)
    if (database === undefined) throw new Error('a store that was not opened here')
    return database
  }
  const storeOver = (database: Database): OpenStore => {
    const store = createStore(database)
    databases.set(store, database)
    return store
  }
  // One for all questions of a stream: it knows which sources are down.
  const lives = new WeakMap<Database, Live>()
  const liveOf = (database: Database): Live => {
    const live = lives.get(database) ?? liveFrom(config, database, (what, message) => log.warn(what, message))
    lives.set(database, live)
    return live
  }
  return {
    terminal,
    log,
    databaseOf,
    defaults: defaultsOf(config, log, server),
    openStore: async (at) => {
      const url = at === null ? config.DATABASE_URL : undefined
      return storeOver(
        url === undefined ? await openSqlite(at ?? config.SEAMHAND_DATA, { server }) : await (await later.postgres()).openPostgres(url)
      )
    },
    upkeep: {
      migrated: (store) => {
        const { kind, migrated } = databaseOf(store)
        return { database: kind === 'sqlite' ? 'SQLite' : 'PostgreSQL', ...migrated }
      },
      backup: async (store, file) => (await later.backups()).writeBackup(databaseOf(store), file),
      restore: async (store, file) => (await later.backups()).readBackup(databaseOf(store), file),
      move: async (folder, url) => {
        const { database, rows } = await (await later.move()).moveToPostgres(folder ?? config.SEAMHAND_DATA, url)
        return { store: storeOver(database), rows }
      }
    },
    weather: async (choice, issuedAt, store) => weatherOf(choice ?? choiceOf(config), () => refreshedFirst(liveOf(databaseOf(store))), issuedAt),
    sheets: (file) => (file === null ? standard : orStop(() => onlySheet(file, folder))),
    resolveSheet: resolveKept,
    outline: async (file, units) => (await later.outline()).outlineFrom(file, units),
    manifest: async (url) => (await later.manifest()).manifestYaml(url),
    posting: (store, at) => {
      const outbox = outboxTable(databaseOf(store))
      const note = (what: object) => log.warn(what, 'post not sent')
      return { slots: outbox, channelOf: (_site, { channel }) => channel, drain: { outbox, draw, chat: null, clock: () => at, wait: null, note } }
    }
  }
}

/** A server draws beside its answers; a subcommand waits for its file anyway. */
function defaultsOf({ SEAMHAND_LANG: lang, SEAMHAND_UNITS: units }: Config, log: Wired['log'], server: boolean): Wired['defaults'] {
  const beside = () => drawElsewhere(draw, (why) => log.warn({ why }, 'no thread to draw in')).draw
  return { draw: server ? beside() : draw, lang, units, report: (error, context) => reportBug(log, error, context) }
}

function orStop<T>(make: () => T): T {
  try {
    return make()
  } catch (error) {
    if (error instanceof LimitsError) throw new Stop(error.message, 1, 'config')
    throw error
  }
}
