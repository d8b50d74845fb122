import { expect, test } from 'vitest'
import { alertsTable, type Kept } from '../../../src/adapters/store/alerts-table.js'
import { turnsTable } from '../../../src/adapters/store/turns-table.js'
import { weatherTable } from '../../../src/adapters/store/weather-table.js'
import type { AlertStore } from '../../../src/adapters/weather/alert-source.js'
import { type LiveWeather, liveWeather } from '../../../src/adapters/weather/live.js'
import type { LiveSource } from '../../../src/adapters/weather/live-source.js'
import type { Turns } from '../../../src/adapters/weather/turns.js'
import { alertOf } from '../../support/alerts.js'
import { forEachDatabase } from '../../support/databases.js'
import { forecastOf, hour } from '../../support/hours.js'

const start = 1_777_852_800

forEachDatabase((open) => {
  test('the last answer of each cell and source is kept as it was', async () => {
    const table: AlertStore = alertsTable(await open())
    const kept: Kept = { fetchedAt: start, expiresAt: start + 300, note: '{"a":1}', all: [alertOf({ event: '\u0000 <Wind> \ud83d\ude00' })] }
    expect(await table.alerts('33.52,-86.81', 'nws')).toBeNull()
    await table.saveAlerts('33.52,-86.81', 'nws', kept)
    expect(await table.alerts('33.52,-86.81', 'nws')).toEqual(kept)
    const uncovered = { ...kept, note: null, all: null }
    await table.saveAlerts('33.52,-86.81', 'nws', uncovered)
    expect(await table.alerts('33.52,-86.81', 'nws')).toEqual(uncovered)
    expect(await table.alerts('33.53,-86.81', 'nws')).toBeNull()
    expect(await table.alerts('33.52,-86.81', 'met')).toBeNull()
  })

  test('of many who take a turn at once one has it, until it ends', async () => {
    const [one, other]: readonly Turns[] = [turnsTable(await open('turns')), turnsTable(await open('turns'))]
    if (one === undefined || other === undefined) throw new Error('no turns')
    const takes = await Promise.all(Array.from({ length: 12 }, (_, n) => (n % 2 === 0 ? one : other).take('forecast a', start, start + 120 + n)))
    expect(takes.filter((until) => until === null)).toHaveLength(1)
    const until = takes.find((at) => at !== null) as number
    expect(new Set(takes)).toEqual(new Set([null, until]))
    expect(await other.take('alerts a', start, start + 120)).toBeNull()
    await one.end('forecast a', start + 300)
    expect(await other.take('forecast a', start + 299, start + 400)).toBe(start + 300)
    expect(await other.take('forecast a', start + 300, start + 400)).toBeNull()
    // The clock went back by a day: that turn holds nobody up.
    expect(await one.take('forecast a', start - 86_400, start - 86_000)).toBeNull()
  })

  test('servers over one store that tick in the same second ask once for each cell', async () => {
    const asked: number[] = []
    const live: LiveSource = {
      name: 'met',
      covers: () => true,
      fetch: async (lat, _lon, _modified, now) => {
        asked.push(lat)
        await new Promise((resolve) => setTimeout(resolve, 5))
        const forecast = forecastOf('2026-05-04T00:00:00Z', [hour('2026-05-04T01:00:00Z', { airC: 10 })])
        return { kind: 'fresh', forecast, expiresAt: now + 1800, lastModified: null, body: '{}', note: null }
      }
    }
    const servers: LiveWeather[] = []
    for (let n = 0; n < 3; n += 1) {
      const database = await open('servers')
      servers.push(liveWeather({ sources: [live], store: { ...weatherTable(database), ...turnsTable(database) }, note: () => undefined }))
    }
    const places = Array.from({ length: 60 }, (_, n) => ({ lat: 50 + (n % 4), lon: 8, zone: 'Europe/Berlin', invented: false }))
    for (const at of [start, start + 60, start + 2400]) await Promise.all(servers.map(({ refreshAll }) => refreshAll(places, at, () => false)))
    expect(asked.sort()).toEqual([50, 51, 52, 53])
  })
})
