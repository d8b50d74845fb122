import { describe, expect, it } from 'vitest'
import { fixedWeather, sampleWeather, sampleWhereInvented, sources } from '../../../src/adapters/weather/index.js'
import { forecastOf, hour } from '../../support/hours.js'
import { iso } from '../../support/instant.js'

const now = iso('2026-05-04T06:10:00Z')
const real = { lat: 50, lon: 8, zone: 'Europe/Berlin', invented: false }
const demo = { ...real, invented: true }
const file = forecastOf('2026-05-04T06:00:00Z', [hour('2026-05-04T07:00:00Z', { airC: 10 })])

describe('weather that is not live', () => {
  it('is the one file, or none, for every place', async () => {
    expect(await fixedWeather(file).at(demo, now)).toBe(file)
    expect(await fixedWeather(null).at(demo, now)).toBeNull()
  })

  it('is the invented week for every place', async () => {
    expect(await sampleWeather().at(real, now)).toMatchObject({ source: 'sample', sample: true, issuedAt: iso('2026-05-04T06:00:00Z') })
  })

  it('is the invented week for invented places alone', async () => {
    const weather = sampleWhereInvented(fixedWeather(file))
    expect((await weather.at(demo, now))?.sample).toBe(true)
    expect(await weather.at(real, now)).toBe(file)
  })

  it('knows three sources', () => {
    expect(Object.keys(sources)).toEqual(['met', 'nws', 'open-meteo'])
  })
})
