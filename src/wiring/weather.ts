import { readFileSync } from 'node:fs'
import type { Database } from '../adapters/store/schema.js'
import { weatherTable } from '../adapters/store/weather-table.js'
import { Stop } from '../adapters/terminal/io.js'
import { readWeatherFile, WeatherFileError } from '../adapters/weather/file.js'
import { fixedWeather, sampleWeather, sampleWhereInvented } from '../adapters/weather/index.js'
import { type LiveWeather, liveWeather } from '../adapters/weather/live.js'
import { metSource } from '../adapters/weather/met/source.js'
import type { Weather } from '../bot/ports.js'
import type { Config } from '../config.js'
import { engineVersion } from '../core/engine.js'
import type { Instant } from '../core/instant.js'

/** The live sources of the settings over what was fetched before; without a contact there are none. */
export function liveFrom(config: Config, database: Database): LiveWeather {
  const contact = config.SEAMHAND_CONTACT
  const wanted = config.SEAMHAND_WEATHER.kind === 'live' ? config.SEAMHAND_WEATHER.order : ['met']
  const sources = contact === undefined || !wanted.includes('met') ? [] : [metSource({ baseUrl: config.MET_URL, contact, version: engineVersion })]
  return liveWeather({ sources, store: weatherTable(database) })
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
