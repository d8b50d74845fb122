import { readFileSync } from 'node:fs'
import { alertsTable } from '../adapters/store/alerts-table.js'
import type { Database } from '../adapters/store/schema.js'
import { turnsTable } from '../adapters/store/turns-table.js'
import { weatherTable } from '../adapters/store/weather-table.js'
import { Stop } from '../adapters/terminal/io.js'
import { readWeatherFile, WeatherFileError } from '../adapters/weather/file.js'
import { fixedWeather, sampleWeather, sampleWhereInvented } from '../adapters/weather/index.js'
import { type LiveOptions, type LiveWeather, liveWeather } from '../adapters/weather/live.js'
import { type LiveAlerts, liveAlerts } from '../adapters/weather/live-alerts.js'
import type { LiveSource } from '../adapters/weather/live-source.js'
import { metSource } from '../adapters/weather/met/source.js'
import { nwsAlerts, nwsSource } from '../adapters/weather/nws/source.js'
import { openMeteoSource } from '../adapters/weather/open-meteo/source.js'
import type { Weather } from '../bot/ports.js'
import { type Config, weatherSources } from '../config.js'
import { engineVersion } from '../core/engine.js'
import type { Instant } from '../core/instant.js'
import { type Counted, measuredSource } from './measured.js'

/** Weather from live sources, with the alerts of the services that have them. */
export interface Live extends LiveWeather {
  readonly alerts: LiveAlerts['at']
  /** The setting for want of which no source is left to ask. */
  readonly lacks: () => string | null
  readonly refreshAlerts: LiveAlerts['refreshAll']
}

/** The live sources of the settings, in their order, over what was fetched before; without a contact there are none. */
export function liveFrom(config: Config, database: Database, note: LiveOptions['note'], counted: Counted = () => {}): Live {
  const { SEAMHAND_CONTACT: contact, SEAMHAND_WEATHER: set } = config
  const order = [...new Set(set.kind === 'live' ? set.order : weatherSources)]
  const sources = contact === undefined ? [] : order.map((name) => sourceOf(name, contact, config))
  const used = sources.filter((source) => source !== null).map((source) => measuredSource('forecast', source, counted))
  const turns = turnsTable(database)
  const warning = contact === undefined || !order.includes('nws') ? [] : [nwsAlerts({ ...who(contact), baseUrl: config.NWS_URL ?? null })]
  const alerts = liveAlerts({
    sources: warning.map((source) => measuredSource('alerts', source, counted)),
    store: { ...alertsTable(database), ...turns },
    note
  })
  const weather = liveWeather({ sources: used, store: { ...weatherTable(database), ...turns }, note })
  const lacks = used.length > 0 ? null : contact === undefined ? 'SEAMHAND_CONTACT' : 'OPEN_METEO_KEY'
  return { ...weather, alerts: alerts.at, refreshAlerts: alerts.refreshAll, lacks: () => lacks }
}

/** Null where the settings leave a source off: the free service of Open-Meteo is for non-commercial use. */
function sourceOf(name: string, contact: string, config: Config): LiveSource | null {
  const asking = who(contact)
  if (name === 'met') return metSource({ ...asking, baseUrl: config.MET_URL ?? null })
  if (name === 'nws') return nwsSource({ ...asking, baseUrl: config.NWS_URL ?? null })
  const key = config.OPEN_METEO_KEY ?? null
  if (key === null && !config.OPEN_METEO_NON_COMMERCIAL) return null
  return openMeteoSource({ ...asking, baseUrl: config.OPEN_METEO_URL ?? null, key })
}

function who(contact: string) {
  return { contact, version: engineVersion }
}

/** What a choice means: `none`, `sample`, `live` or a file. Throws a Stop that names a file it cannot read. */
export function weatherOf(choice: string, live: () => Weather, issuedAt: Instant): Weather {
  if (choice === 'none') return fixedWeather(null)
  if (choice === 'sample') return sampleWeather()
  return choice === 'live' ? sampleWhereInvented(live()) : fileWeather(choice, issuedAt)
}

/** The choice of the settings, as a word. */
export function choiceOf({ SEAMHAND_WEATHER: set }: Config): string {
  return set.kind === 'file' ? set.path : set.kind
}

/** Asks the sources first where what is kept has expired: a terminal may wait for that, a chat may not. */
export function refreshedFirst(weather: Live): Weather {
  return {
    at: async (place, now) => {
      await weather.refresh(place, now)
      return weather.at(place, now)
    },
    alerts: async (place, now) => {
      await weather.refreshAlerts([place], now, () => false)
      return weather.alerts(place, now)
    },
    lacks: weather.lacks
  }
}

/** Files read once a run: a stream of questions may name the same one again and again. */
const texts = new Map<string, string>()

function fileWeather(path: string, issuedAt: Instant): Weather {
  try {
    const text = texts.get(path) ?? readFileSync(path, 'utf8')
    texts.set(path, text)
    return fixedWeather(readWeatherFile(text, issuedAt))
  } catch (error) {
    const said = error instanceof WeatherFileError ? `${path}: ${error.message}` : `cannot read ${path}: ${(error as Error).message}`
    throw new Stop(said, 1, 'weather-file')
  }
}
