import { describe, expect, it } from 'vitest'
import { mostBytes, mostHours } from '../../../src/adapters/weather/bounds.js'
import { readWeatherFile } from '../../../src/adapters/weather/file.js'
import { fetchMet } from '../../../src/adapters/weather/met/index.js'
import { fetchOpenMeteo } from '../../../src/adapters/weather/open-meteo/index.js'
import { iso } from '../../support/instant.js'
import { downOf } from '../../support/source-down.js'

const now = iso('2026-05-04T03:10:20Z')

/** A service that answers without end, and how much of it was taken. */
function endless(part: Uint8Array): { readonly fetch: typeof fetch; readonly given: () => number; readonly ended: () => boolean } {
  let [given, ended] = [0, false]
  const body = () =>
    new ReadableStream<Uint8Array>({
      pull: (out) => {
        given += part.length
        // Without a bound the test would take all memory: here it ends as a failure.
        if (given > 4 * mostBytes) out.error(new Error('nobody stopped it'))
        else out.enqueue(part)
      },
      cancel: () => {
        ended = true
      }
    })
  return { fetch: async () => new Response(body(), { status: 200 }), given: () => given, ended: () => ended }
}

const common = { baseUrl: 'https://weather.example', contact: 'ops@crew.example', version: '1', lat: 50, lon: 8, now }

describe('an answer of a service', () => {
  it.each([
    ['Open-Meteo', (ask: typeof fetch) => fetchOpenMeteo({ ...common, key: null, fetch: ask })],
    ['MET Norway', (ask: typeof fetch) => fetchMet({ ...common, lastModified: null, fetch: ask })]
  ])('of %s that does not end is let go when it is larger than can be', async (publisher, ask) => {
    const service = endless(new Uint8Array(256 * 1024).fill(32))
    expect(await downOf(ask(service.fetch))).toMatchObject({ message: `${publisher}: answer is larger than 4 MiB`, status: 200, retryAt: now + 300 })
    expect(service.given()).toBeLessThan(mostBytes + 1024 * 1024)
    expect(service.ended()).toBe(true)
  })

  it('of more hours than a year is none', async () => {
    const hours = mostHours + 1
    const first = iso('2026-01-01T00:00:00Z')
    const time = Array.from({ length: hours }, (_, i) => new Date((first + i * 3600) * 1000).toISOString().slice(0, 16))
    const text = (some: number) =>
      JSON.stringify({
        utc_offset_seconds: 0,
        hourly_units: { temperature_2m: '°C' },
        hourly: { time: time.slice(0, some), temperature_2m: time.slice(0, some).map(() => 7) }
      })
    const ask = fetchOpenMeteo({ ...common, key: null, fetch: async () => new Response(text(hours)) })
    expect(await downOf(ask)).toMatchObject({ message: 'Open-Meteo: answer holds more than 10000 hours' })
    expect(() => readWeatherFile(text(hours), now)).toThrow('Open-Meteo forecast holds more than 10000 hours')
    expect(readWeatherFile(text(mostHours), now).hours).toHaveLength(mostHours)
  })
})

describe('a weather file', () => {
  it('larger than any answer is refused before it is read', () => {
    expect(() => readWeatherFile(' '.repeat(mostBytes + 1), now)).toThrow('weather file is larger than 4 MiB')
    expect(() => readWeatherFile(' '.repeat(mostBytes), now)).toThrow('weather file is not JSON')
  })

  // Found by fuzzing: 60,000 intervals of 400 hours fit in 4 MiB, and took the reader half a minute.
  it.each(['temperature', 'weather'])('whose intervals of %s unfold to endless hours is refused', (layer) => {
    const long = Array.from({ length: 26 }, () => ({ validTime: '2026-05-04T00:00:00+00:00/P16DT16H', value: layer === 'weather' ? null : 1 }))
    const temperature = { uom: 'wmoUnit:degC', values: [] }
    const text = (values: readonly unknown[]) => JSON.stringify({ properties: { temperature, [layer]: { uom: 'wmoUnit:degC', values } } })
    expect(() => readWeatherFile(text(long), now)).toThrow(`properties.${layer}.values: intervals of more than 10000 hours`)
    expect(readWeatherFile(text(long.slice(1)), now).hours.length).toBeGreaterThan(0)
  })
})
