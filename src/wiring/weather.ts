import { readFileSync } from 'node:fs'
import type { Database } from '../adapters/store/schema.js'
import { weatherTable } from '../adapters/store/weather-table.js'
import { Stop } from '../adapters/terminal/io.js'
import { readWeatherFile, WeatherFileError } from '../adapters/weather/file.js'
import { fixedWeather, sampleWeather, sampleWhereInvented } from '../adapters/weather/index.js'
import { type LiveOptions, type LiveWeather, liveWeather } from '../adapters/weather/live.js'
import type { LiveSource } from '../adapters/weather/live-source.js'
import { metSource } from '../adapters/weather/met/source.js'
import { nwsSource } from '../adapters/weather/nws/source.js'
import { openMeteoSource } from '../adapters/weather/open-meteo/source.js'
import type { Weather } from '../bot/ports.js'
import { type Config, weatherSources } from '../config.js'
import { engineVersion } from '../core/engine.js'
import type { Instant } from '../core/instant.js'
import { type Counted, measuredSource } from './measured.js'

/** The live sources of the settings, in their order, over what was fetched before; without a contact there are none. */
export function liveFrom(config: Config, database: Database, note: LiveOptions['note'], counted: Counted = () => {}): LiveWeather {
  const { SEAMHAND_CONTACT: contact, SEAMHAND_WEATHER: set } = config
  const order = [...new Set(set.kind === 'live' ? set.order : weatherSources)]
  const sources = contact === undefined ? [] : order.map((name) => sourceOf(name, contact, config))
  const used = sources.filter((source) => source !== null).map((source) => measuredSource(source, counted))
  return liveWeather({ sources: used, store: weatherTable(database), note })
}

/** Null where the settings leave a source off: the free service of Open-Meteo is for non-commercial use. */
function sourceOf(name: string, contact: string, config: Config): LiveSource | null {
  const who = { contact, version: engineVersion }
  if (name === 'met') return metSource({ ...who, baseUrl: config.MET_URL ?? null })
  if (name === 'nws') return nwsSource({ ...who, baseUrl: config.NWS_URL ?? null })
  const key = config.OPEN_METEO_KEY ?? null
  if (key === null && !config.OPEN_METEO_NON_COMMERCIAL) return null
  return openMeteoSource({ ...who, baseUrl: config.OPEN_METEO_URL ?? null, key })
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
export function refreshedFirst(weather: LiveWeather): Weather {
  return {
    at: async (place, now) => {
      await weather.refresh(place, now)
      return weather.at(place, now)
    }
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
