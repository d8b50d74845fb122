import { describe, expect, it } from 'vitest'
import { liveWeather } from '../../../src/adapters/weather/live.js'
import type { Fetched, LiveSource } from '../../../src/adapters/weather/live-source.js'
import { SourceDown } from '../../../src/adapters/weather/source-down.js'
import { cellOf } from '../../../src/adapters/weather/weather-store.js'
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
