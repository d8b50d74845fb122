import { expect, test } from 'vitest'
import type { Fetched } from '../../../src/adapters/store/weather-table.js'
import { weatherTable } from '../../../src/adapters/store/weather-table.js'
import type { WeatherStore } from '../../../src/adapters/weather/weather-store.js'
import type { Hour } from '../../../src/core/weather/forecast.js'
import { forEachDatabase } from '../../support/databases.js'

const start = 1_777_852_800
const hourS = 3600
const dayS = 86_400

function hour(at: number, change: Partial<Hour> = {}): Hour {
  const none = { airC: null, rhPct: null, dewPointC: null, windKmh: null, cloudPct: null, pressureHpa: null }
  return { at, ...none, gustKmh: null, rainMm: null, rainChancePct: null, thunder: null, sunWm2: null, ...change }
}

function fetched(hours: readonly Hour[], at: number, source = 'met'): Fetched {
  const forecast = { source, issuedAt: at, sample: false, sha256: 'ab', hours }
  return { fetchedAt: at, issuedAt: at, expiresAt: at + 1800, lastModified: 'Mon, 04 May 2026 00:00:00 GMT', forecast }
}

function hoursFrom(at: number, count: number, change: Partial<Hour> = {}): Hour[] {
  return Array.from({ length: count }, (_, n) => hour(at + n * hourS, change))
}

forEachDatabase((open) => {
  async function fresh(): Promise<WeatherStore> {
    return weatherTable(await open())
  }

  test('nothing is known of a cell that was never fetched', async () => {
    const weather = await fresh()
    expect(await weather.latest('50.00,8.00', 'met')).toBeNull()
    expect(await weather.hours('50.00,8.00', 0, start * 2)).toEqual([])
  })

  test('the latest answer of each cell and source is kept as it was', async () => {
    const weather = await fresh()
    const first = fetched(hoursFrom(start, 3, { airC: 1.5, thunder: false }), start)
    const second = { ...fetched(hoursFrom(start, 2), start + hourS), lastModified: null }
    await weather.save('a', 'met', first)
    expect(await weather.latest('a', 'met')).toEqual(first)
    await weather.save('a', 'met', second)
    expect(await weather.latest('a', 'met')).toEqual(second)
    expect(await weather.latest('a', 'nws')).toBeNull()
    expect(await weather.latest('b', 'met')).toBeNull()
  })

  test('hours of a cell are merged value by value; a null leaves what was there', async () => {
    const weather = await fresh()
    await weather.save('a', 'met', fetched(hoursFrom(start, 4, { airC: 10, sunWm2: 100 }), start))
    await weather.save('a', 'open-meteo', fetched(hoursFrom(start + 2 * hourS, 4, { airC: 12 }), start + hourS, 'open-meteo'))
    const kept = await weather.hours('a', start, start + 10 * hourS)
    expect(kept.map(({ at, airC, sunWm2 }) => [(at - start) / hourS, airC, sunWm2])).toEqual([
      [0, 10, 100],
      [1, 10, 100],
      [2, 12, 100],
      [3, 12, 100],
      [4, 12, null],
      [5, 12, null]
    ])
    expect((await weather.hours('a', start + hourS, start + 2 * hourS)).map(({ at }) => at)).toEqual([start + hourS, start + 2 * hourS])
  })

  test('three days behind are still there after a week of fetches; older hours go', async () => {
    const weather = await fresh()
    for (let day = 0; day < 12; day += 1)
      await weather.save('a', 'met', fetched(hoursFrom(start + day * dayS, 48, { airC: day }), start + day * dayS))
    const now = start + 11 * dayS
    expect(await weather.hours('a', now - 3 * dayS, now)).toHaveLength(73)
    expect(await weather.hours('a', 0, now - 8 * dayS)).toEqual([])
  })

  test('answers of one cell that come at once are all kept', async () => {
    const weather = await fresh()
    const sources = ['met', 'nws', 'open-meteo']
    await Promise.all(sources.map((source) => weather.save('a', source, fetched(hoursFrom(start, 240, { airC: 5 }), start, source))))
    for (const source of sources) expect((await weather.latest('a', source))?.forecast.hours).toHaveLength(240)
    expect(await weather.hours('a', 0, start * 2)).toHaveLength(240)
  })
})
