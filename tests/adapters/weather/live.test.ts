import { describe, expect, it } from 'vitest'
import { liveWeather } from '../../../src/adapters/weather/live.js'
import type { Fetched, LiveSource } from '../../../src/adapters/weather/live-source.js'
import { SourceDown } from '../../../src/adapters/weather/source-down.js'
import { cellOf } from '../../../src/adapters/weather/weather-store.js'
import { ageOf } from '../../../src/core/weather/lookup.js'
import { forecastOf, hour } from '../../support/hours.js'
import { iso } from '../../support/instant.js'
import { memoryWeatherStore } from '../../support/weather-store.js'

const noon = iso('2026-05-04T12:00:00Z')
const note = () => undefined
const place = { lat: 50.004, lon: 8.0049, zone: 'Europe/Berlin', invented: false }

/** A source that answers from a list, and notes what it was asked. */
function scripted(name: string, answers: readonly (Fetched | Error)[], covers = true) {
  const asked: { lat: number; lon: number; lastModified: string | null }[] = []
  const source: LiveSource = {
    name,
    covers: () => covers,
    fetch: async (lat, lon, lastModified) => {
      asked.push({ lat, lon, lastModified })
      const answer = answers[asked.length - 1]
      if (answer === undefined) throw new Error(`${name} asked once too often`)
      if (answer instanceof Error) throw answer
      return answer
    }
  }
  return { source, asked }
}

function fresh(
  issuedAt: string,
  expiresAt: number,
  hours = [hour('2026-05-04T12:00:00Z', { airC: 10 }), hour('2026-05-04T13:00:00Z', { airC: 11, rainMm: 0 })]
): Fetched {
  return { kind: 'fresh', forecast: forecastOf(issuedAt, hours), expiresAt, lastModified: `changed ${issuedAt}`, body: '{}', note: null }
}

describe('liveWeather', () => {
  it('answers from the store alone, and has nothing before the first fetch', async () => {
    const { source, asked } = scripted('met', [])
    const weather = liveWeather({ sources: [source], store: memoryWeatherStore(), note })
    expect(await weather.at(place, noon)).toBeNull()
    expect(asked).toEqual([])
  })

  it('fetches, keeps until it expires, then asks conditionally', async () => {
    const { source, asked } = scripted('met', [
      fresh('2026-05-04T11:30:00Z', noon + 1800),
      { kind: 'unchanged', expiresAt: noon + 3600 },
      fresh('2026-05-04T12:50:00Z', noon + 7200)
    ])
    const weather = liveWeather({ sources: [source], store: memoryWeatherStore(), note })
    expect(await weather.refresh(place, noon)).toBe('fresh')
    expect(await weather.refresh(place, noon + 1799)).toBe('kept')
    expect(await weather.refresh(place, noon + 1800)).toBe('unchanged')
    expect(await weather.refresh(place, noon + 3599)).toBe('kept')
    expect(await weather.refresh(place, noon + 3600)).toBe('fresh')
    expect(asked.map((one) => one.lastModified)).toEqual([null, 'changed 2026-05-04T11:30:00Z', 'changed 2026-05-04T11:30:00Z'])
    expect(await weather.at(place, noon + 3600)).toMatchObject({ source: 'met', issuedAt: iso('2026-05-04T12:50:00Z') })
  })

  it('asks once for all places of a cell of 2 decimals, for its middle', async () => {
    const { source, asked } = scripted('met', [fresh('2026-05-04T11:30:00Z', noon + 1800)])
    const weather = liveWeather({ sources: [source], store: memoryWeatherStore(), note })
    await weather.refresh(place, noon)
    expect(await weather.refresh({ ...place, lat: 49.996, lon: 7.9951 }, noon)).toBe('kept')
    expect(asked).toEqual([{ lat: 50, lon: 8, lastModified: null }])
    expect(await weather.at({ ...place, lat: 50.006 }, noon)).toBeNull()
  })

  it('asks once an hour for each cell of many places, those left out longest first, and stops where it is told to', async () => {
    const cells = [0, 1, 2].map((n) => ({ ...place, lat: 50 + n }))
    const { source, asked } = scripted(
      'met',
      Array.from({ length: 20 }, () => fresh('2026-05-04T11:30:00Z', noon + 60))
    )
    const weather = liveWeather({ sources: [source], store: memoryWeatherStore(), note })
    const many = [...cells, ...cells.map((cell) => ({ ...cell, lon: cell.lon - 0.001 }))]
    let left = 2
    expect(await weather.refreshAll(many, noon, () => left-- <= 0)).toBe(2)
    expect(await weather.refreshAll(many, noon + 60, () => false)).toBe(1)
    expect(asked.map(({ lat }) => lat).sort()).toEqual([50, 51, 52])
    expect(await weather.refreshAll(many, noon + 3599, () => false)).toBe(0)
    expect(await weather.refreshAll(many, noon + 3600, () => false)).toBe(2)
    // The clock went back: nothing waits for an hour that is far ahead.
    expect(await weather.refreshAll(many, noon - 86_400, () => false)).toBe(3)
  })

  it('a cell for which nothing was to be had is asked for again sooner', async () => {
    const { source, asked } = scripted('met', [new SourceDown('away', 503, noon + 10), fresh('2026-05-04T11:30:00Z', noon + 1800)])
    const weather = liveWeather({ sources: [source], store: memoryWeatherStore(), note })
    await weather.refreshAll([place], noon, () => false)
    await weather.refreshAll([place], noon + 299, () => false)
    expect(asked).toHaveLength(1)
    await weather.refreshAll([place], noon + 300, () => false)
    expect(asked).toHaveLength(2)
  })

  it('falls back in order, spares the one that is down, and returns to it', async () => {
    const first = scripted('met', [new SourceDown('away', 503, noon + 600), fresh('2026-05-04T12:15:00Z', noon + 3600)])
    const second = scripted('nws', [fresh('2026-05-04T11:00:00Z', noon + 300), { kind: 'unchanged', expiresAt: noon + 500 }])
    const weather = liveWeather({ sources: [first.source, second.source], store: memoryWeatherStore(), note })
    expect(await weather.refresh(place, noon)).toBe('fresh')
    expect(await weather.refresh(place, noon + 400)).toBe('unchanged')
    expect(first.asked).toHaveLength(1)
    expect(await weather.at(place, noon + 400)).toMatchObject({ issuedAt: iso('2026-05-04T11:00:00Z') })
    expect(await weather.refresh(place, noon + 600)).toBe('fresh')
    expect(await weather.at(place, noon + 600)).toMatchObject({ issuedAt: iso('2026-05-04T12:15:00Z') })
  })

  it('asks the next source as well where the one before has nothing newer than 3 h, and answers with what was issued last', async () => {
    const old = fresh('2026-05-04T08:59:00Z', noon + 1800)
    const first = scripted('met', [old, { kind: 'unchanged', expiresAt: noon + 5400 }, fresh('2026-05-04T12:40:00Z', noon + 9000)])
    const second = scripted('nws', [fresh('2026-05-04T11:00:00Z', noon + 3600), fresh('2026-05-04T12:30:00Z', noon + 7200)])
    const weather = liveWeather({ sources: [first.source, second.source], store: memoryWeatherStore(), note })
    expect(await weather.refresh(place, noon)).toBe('fresh')
    expect(await weather.at(place, noon)).toMatchObject({ issuedAt: iso('2026-05-04T11:00:00Z') })
    expect(await weather.refresh(place, noon + 1800)).toBe('unchanged')
    expect(await weather.refresh(place, noon + 1801)).toBe('kept')
    expect([first.asked.length, second.asked.length]).toEqual([2, 1])
    expect(await weather.refresh(place, noon + 3600)).toBe('fresh')
    expect([first.asked.length, second.asked.length]).toEqual([2, 2])
    expect(await weather.refresh(place, noon + 5400)).toBe('fresh')
    expect([first.asked.length, second.asked.length]).toEqual([3, 2])
    expect(await weather.at(place, noon + 5400)).toMatchObject({ issuedAt: iso('2026-05-04T12:40:00Z') })
  })

  it('leaves the next source alone while the one before was issued within 3 h, to the second', async () => {
    for (const [issuedAt, asked] of [
      ['2026-05-04T09:00:00Z', 0],
      ['2026-05-04T08:59:59Z', 1]
    ] as const) {
      const second = scripted('nws', [fresh('2026-05-04T11:00:00Z', noon + 3600)])
      const sources = [scripted('met', [fresh(issuedAt, noon + 1800)]).source, second.source]
      await liveWeather({ sources, store: memoryWeatherStore(), note }).refresh(place, noon)
      expect(second.asked).toHaveLength(asked)
    }
  })

  it.each([
    [['met', 'nws'], 10],
    [['nws', 'met'], 20]
  ])('takes the earlier of the order, %j, where two were issued alike', async (order, airC) => {
    const at = '2026-05-04T08:00:00Z'
    const made = {
      met: () => scripted('met', [fresh(at, noon + 1800, [hour('2026-05-04T12:00:00Z', { airC: 10 })])]).source,
      nws: () => scripted('nws', [fresh(at, noon + 1800, [hour('2026-05-04T12:00:00Z', { airC: 20 })])]).source
    }
    const weather = liveWeather({ sources: order.map((name) => made[name as 'met' | 'nws']()), store: memoryWeatherStore(), note })
    await weather.refresh(place, noon)
    expect((await weather.at(place, noon))?.hours[0]?.airC).toBe(airC)
  })

  it('does not let a source with a wrong clock be the newest for ever', async () => {
    const first = scripted('met', [new SourceDown('away', 503, noon + 60), fresh('2026-05-04T12:50:00Z', noon + 9000)])
    const second = scripted('nws', [fresh('2099-01-01T00:00:00Z', noon + 60)])
    const weather = liveWeather({ sources: [first.source, second.source], store: memoryWeatherStore(), note })
    await weather.refresh(place, noon)
    await weather.refresh(place, noon + 3600)
    expect(await weather.at(place, noon + 3600)).toMatchObject({ issuedAt: iso('2026-05-04T12:50:00Z') })
  })

  it('still gives what is older than 12 h when there is nothing else: whoever reads it says nothing, and why', async () => {
    const { source } = scripted('met', [fresh('2026-05-03T23:00:00Z', noon + 1800)])
    const weather = liveWeather({ sources: [source], store: memoryWeatherStore(), note })
    await weather.refresh(place, noon)
    const forecast = await weather.at(place, noon)
    expect(forecast).not.toBeNull()
    expect(forecast && ageOf(forecast, noon)).toBe('dead')
  })

  it.each([
    [null, true],
    [401, true],
    [403, true],
    [429, true],
    [404, false],
    [500, false],
    [200, false]
  ])('spares a source that is down with status %s for all places: %s', async (status, forAll) => {
    const { source, asked } = scripted('met', [new SourceDown('down', status, noon + 600), fresh('2026-05-04T11:30:00Z', noon + 1800)])
    const weather = liveWeather({ sources: [source], store: memoryWeatherStore(), note })
    await weather.refresh(place, noon)
    expect(await weather.refresh({ ...place, lat: 51 }, noon + 599)).toBe(forAll ? 'down' : 'fresh')
    expect(asked).toHaveLength(forAll ? 1 : 2)
    if (forAll) expect(await weather.refresh({ ...place, lat: 51 }, noon + 600)).toBe('fresh')
  })

  it('tells the operator once which source is down until when, and what a source says besides', async () => {
    const told: unknown[] = []
    const first = scripted('met', [new SourceDown('MET Norway answered 503', 503, noon + 600)])
    const answer = fresh('2026-05-04T11:30:00Z', noon + 1800)
    const second = scripted('nws', [{ ...answer, note: 'soon gone' } as Fetched])
    const weather = liveWeather({
      sources: [first.source, second.source],
      store: memoryWeatherStore(),
      note: (what, message) => told.push([what, message])
    })
    await weather.refresh(place, noon)
    await weather.refresh(place, noon + 300)
    expect(told).toEqual([
      [{ source: 'met', retryAt: '2026-05-04T12:10:00Z' }, 'MET Norway answered 503'],
      [{ source: 'nws', retryAt: null }, 'soon gone']
    ])
  })

  it('is down when none answers, still answering with what was kept', async () => {
    const { source } = scripted('met', [fresh('2026-05-04T11:30:00Z', noon + 60), new SourceDown('slow', null, noon + 400)])
    const weather = liveWeather({ sources: [source], store: memoryWeatherStore(), note })
    await weather.refresh(place, noon)
    expect(await weather.refresh(place, noon + 60)).toBe('down')
    expect(await weather.refresh(place, noon + 399)).toBe('down')
    expect(await weather.at(place, noon + 60)).toMatchObject({ issuedAt: iso('2026-05-04T11:30:00Z') })
  })

  it('does not ask a source that does not cover the place', async () => {
    const weather = liveWeather({ sources: [scripted('nws', [], false).source], store: memoryWeatherStore(), note })
    expect(await weather.refresh(place, noon)).toBe('down')
  })

  it('does not take a bug for a source that is down', async () => {
    const weather = liveWeather({ sources: [scripted('met', [new TypeError('bug')]).source], store: memoryWeatherStore(), note })
    await expect(weather.refresh(place, noon)).rejects.toThrow(TypeError)
  })

  it('puts the hours kept before in front, value by value where they meet', async () => {
    const early = fresh('2026-05-04T02:00:00Z', noon - 3600, [
      hour('2026-05-04T03:00:00Z', { airC: 5 }),
      hour('2026-05-04T12:00:00Z', { airC: 8, rainMm: 0.4 }),
      hour('2026-05-04T13:00:00Z', { airC: 9 })
    ])
    const { source } = scripted('met', [early, fresh('2026-05-04T11:30:00Z', noon + 1800)])
    const weather = liveWeather({ sources: [source], store: memoryWeatherStore(), note })
    await weather.refresh(place, iso('2026-05-04T02:05:00Z'))
    await weather.refresh(place, noon)
    const got = await weather.at(place, noon)
    expect(got?.hours.map(({ airC, rainMm }) => [airC, rainMm])).toEqual([
      [5, null],
      [10, 0.4],
      [11, 0]
    ])
    expect(got?.issuedAt).toBe(iso('2026-05-04T11:30:00Z'))
  })

  it('does not answer a question about the past with what came later', async () => {
    const { source } = scripted('met', [fresh('2026-05-04T11:30:00Z', noon + 1800)])
    const weather = liveWeather({ sources: [source], store: memoryWeatherStore(), note })
    await weather.refresh(place, noon)
    expect(await weather.at(place, noon - 301)).toBeNull()
    expect(await weather.at(place, noon - 1)).not.toBeNull()
  })
})

describe('cellOf', () => {
  it.each([
    [50, 8, '50.00,8.00'],
    [-0.001, 0.004, '0.00,0.00'],
    [-33.987, 151.205, '-33.99,151.21'],
    [89.999, -180, '90.00,-180.00']
  ])('%d, %d → %s', (lat, lon, cell) => {
    expect(cellOf(lat, lon)).toBe(cell)
  })
})
