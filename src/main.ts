#!/usr/bin/env node
import { readFileSync } from 'node:fs'
import { createInterface } from 'node:readline'
import { Settings } from 'luxon'
import { createLog, reportBug } from './adapters/log.js'
import { LimitsError, onlySheet, readSheets, resolveKept } from './adapters/limits/files.js'
import { manifestYaml } from './adapters/slack/manifest.js'
import { createStore } from './adapters/store/store.js'
import { openSqlite } from './adapters/store/open-sqlite.js'
import { openPostgres } from './adapters/store/open-postgres.js'
import type { Database } from './adapters/store/schema.js'
import { outboxTable } from './adapters/store/outbox-table.js'
import { weatherTable } from './adapters/store/weather-table.js'
import { Stop, type Terminal } from './adapters/terminal/io.js'
import { subcommands } from './adapters/terminal/index.js'
import type { OpenStore, Tools } from './adapters/terminal/tools.js'
import { readWeatherFile, WeatherFileError } from './adapters/weather/file.js'
import { fixedWeather, sampleWeather, sampleWhereInvented } from './adapters/weather/index.js'
import { liveWeather, type LiveWeather } from './adapters/weather/live.js'
import { metSource } from './adapters/weather/met/source.js'
import { StoreError, type Weather } from './bot/ports.js'
import { ConfigError, readConfig, type Config } from './config.js'
import { engineVersion } from './core/engine.js'
import type { Instant } from './core/instant.js'

Settings.throwOnInvalid = false

/** The databases behind the stores that were opened, for what is kept beside the log. */
const databases = new WeakMap<OpenStore, Database>()

async function openStore(config: Config, folder: string | null, server: boolean): Promise<OpenStore> {
  const shared = folder === null ? config.DATABASE_URL : undefined
  const database = shared === undefined ? await openSqlite(folder ?? config.SEAMHAND_DATA, { server }) : await openPostgres(shared)
  const store = createStore(database)
  databases.set(store, database)
  return store
}

/** `live` asks the sources when what is kept has expired: a terminal may wait, a chat may not. */
function chosenWeather(config: Config, choice: string | null, issuedAt: Instant, store: OpenStore): Weather {
  const set = config.SEAMHAND_WEATHER
  const wanted = choice ?? (set.kind === 'file' ? set.path : set.kind)
  if (wanted === 'none') return fixedWeather(null)
  if (wanted === 'sample') return sampleWeather()
  if (wanted === 'live') return sampleWhereInvented(refreshedFirst(live(config, store)))
  return fileWeather(wanted, issuedAt)
}

function live(config: Config, store: OpenStore): LiveWeather {
  const database = databases.get(store)
  if (database === undefined) throw new Error('a store that main did not open')
  const contact = config.SEAMHAND_CONTACT
  const sources = contact === undefined ? [] : [metSource({ baseUrl: config.MET_URL, contact, version: engineVersion })]
  return liveWeather({ sources, store: weatherTable(database) })
}

function refreshedFirst(weather: LiveWeather): Weather {
  return {
    at: async (place, now) => {
      await weather.refresh(place, now)
      return weather.at(place, now)
    }
  }
}

const files = new Map<string, string>()

function fileWeather(path: string, issuedAt: Instant): Weather {
  try {
    const text = files.get(path) ?? readFileSync(path, 'utf8')
    files.set(path, text)
    return fixedWeather(readWeatherFile(text, issuedAt))
  } catch (error) {
    if (error instanceof WeatherFileError) throw new Stop(`${path}: ${error.message}`, 1, 'weather-file')
    throw new Stop(`cannot read ${path}: ${(error as Error).message}`, 1, 'weather-file')
  }
}

function orStop<T>(make: () => T): T {
  try {
    return make()
  } catch (error) {
    if (error instanceof LimitsError) throw new Stop(error.message, 1, 'config')
    throw error
  }
}

function toolsFor(config: Config, terminal: Terminal, server: boolean): Tools {
  const log = createLog(config.LOG_LEVEL)
  const folder = config.SEAMHAND_LIMITS ?? null
  const standard = orStop(() => readSheets(folder))
  return {
    terminal,
    defaults: { lang: config.SEAMHAND_LANG, units: config.SEAMHAND_UNITS, report: (error, context) => reportBug(log, error, context) },
    openStore: (at) => openStore(config, at, server),
    weather: async (choice, issuedAt, store) => chosenWeather(config, choice, issuedAt, store),
    sheets: (file) => (file === null ? standard : orStop(() => onlySheet(file, folder))),
    resolveSheet: resolveKept,
    manifest: manifestYaml,
    posting: (store, at) => posting(store, at, log)
  }
}

/** Posting without a chat: what is due is queued, and stays so until a server sends it. */
function posting(store: OpenStore, at: Instant, log: ReturnType<typeof createLog>): ReturnType<Tools['posting']> {
  const database = databases.get(store)
  if (database === undefined) throw new Error('a store that main did not open')
  const table = outboxTable(database)
  return {
    slots: table,
    drain: {
      outbox: table, chat: null, clock: () => at, wait: null,
      note: ({ workspace, key, why, detail }, error) => void log.warn({ workspace, post: key, why, detail, err: error }, 'post not sent')
    },
    channelOf: (_site, settings) => settings.channel
  }
}

const terminal: Terminal = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  lines: () => createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY }),
  now: () => Math.floor(Date.now() / 1000)
}

async function main(args: readonly string[]): Promise<number> {
  const [name = 'serve', ...rest] = args
  try {
    if (!Object.hasOwn(subcommands, name)) throw new Stop(`no such command: ${name}. Use ${Object.keys(subcommands).join(', ')}`, 2, 'unknown-command')
    const config = readConfig(process.env)
    const run = subcommands[name as keyof typeof subcommands]
    return await run(rest, toolsFor(config, terminal, name === 'serve'))
  } catch (error) {
    if (error instanceof Stop) return say(error.message, error.code)
    if (error instanceof ConfigError || error instanceof StoreError) return say(error.message, 1)
    throw error
  }
}

function say(message: string, code: number): number {
  terminal.err(`${message}\n`)
  return code
}

process.exitCode = await main(process.argv.slice(2))
