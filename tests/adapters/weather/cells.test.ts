import { describe, expect, it } from 'vitest'
import { cellRounds, type Place } from '../../../src/adapters/weather/cells.js'
import { liveWeather } from '../../../src/adapters/weather/live.js'
import type { LiveSource } from '../../../src/adapters/weather/live-source.js'
import { forecastOf, hour } from '../../support/hours.js'
import { iso } from '../../support/instant.js'
import { memoryWeatherStore } from '../../support/weather-store.js'

const start = iso('2026-05-04T03:00:00Z')
const minutes = Array.from({ length: 180 }, (_, minute) => minute)

/** Sites strewn over three cells of 2 decimals. */
const sites: readonly Place[] = Array.from({ length: 500 }, (_, n) => ({
  lat: 50 + (n % 3) * 0.01 + ((n % 7) - 3) * 0.001,
  lon: 8 + ((n % 5) - 2) * 0.001,
  zone: 'Europe/Berlin',
  invented: false
}))

/** A source whose answers are worth half an hour; what it was asked, conditionally or not. */
function source() {
  const asked: { readonly cell: string; readonly at: number; readonly conditional: boolean }[] = []
  const live: LiveSource = {
    name: 'met',
    covers: () => true,
    fetch: async (lat, lon, lastModified, now) => {
      asked.push({ cell: `${lat},${lon}`, at: (now - start) / 60, conditional: lastModified !== null })
      await new Promise((resolve) => setImmediate(resolve))
      if (lastModified !== null) return { kind: 'unchanged', expiresAt: now + 1800 }
      const forecast = forecastOf('2026-05-04T02:30:00Z', [hour('2026-05-04T03:00:00Z', { airC: 10 })])
      return { kind: 'fresh', forecast, expiresAt: now + 1800, lastModified: 'then', body: '{}', note: null }
    }
  }
  return { live, asked }
}

const never = () => false

describe('500 sites in 3 cells, 3 h of ticks', () => {
  it.each([1, 4])('asks once a cell and hour for all of them, conditionally after the first: %i servers', async (servers) => {
    const { live, asked } = source()
    const store = memoryWeatherStore()
    const each = Array.from({ length: servers }, () => liveWeather({ sources: [live], store, note: () => undefined }))
    // All servers tick in the same second.
    for (const minute of minutes) await Promise.all(each.map((weather) => weather.refreshAll(sites, start + minute * 60, never)))
    expect(asked.map(({ cell, at }) => `${at} ${cell}`).sort()).toEqual(
      [0, 60, 120].flatMap((at) => ['50,8', '50.01,8', '50.02,8'].map((cell) => `${at} ${cell}`)).sort()
    )
    expect(asked.map(({ conditional }) => conditional)).toEqual([...Array(3).fill(false), ...Array(6).fill(true)])
  })

  it('a herd that comes at once, and servers that start between, ask for nothing twice', async () => {
    const { live, asked } = source()
    const store = memoryWeatherStore()
    const server = () => liveWeather({ sources: [live], store, note: () => undefined })
    const [first, second] = [server(), server()]
    await Promise.all([first, second, first].map((weather) => weather.refreshAll(sites, start + 150 * 60, never)))
    await server().refreshAll(sites, start + 151 * 60, never)
    expect(asked).toHaveLength(3)
    // The answer is worth half an hour: within the hour it is not asked for anew all the same.
    await server().refreshAll(sites, start + 200 * 60, never)
    expect(asked).toHaveLength(3)
  })
})

describe('a server that dies while it asks', () => {
  it('leaves the cell to the others after two minutes', async () => {
    const turns = memoryWeatherStore()
    const asked: number[] = []
    const rounds = (refresh: () => Promise<'had'>) => cellRounds({ what: 'forecast', atOnce: 2, cellS: { had: 3600, down: 300 }, turns, refresh })
    const place = sites[0] as Place
    void rounds(() => new Promise(() => undefined))([place], start, never)
    const other = rounds(async () => {
      asked.push(asked.length)
      return 'had'
    })
    await other([place], start + 60, never)
    expect(asked).toEqual([])
    await other([place], start + 120, never)
    expect(asked).toEqual([0])
  })
})
