import { describe, expect, it } from 'vitest'
import { readWeatherFile, WeatherFileError } from '../../../src/adapters/weather/file.js'
import { fixture } from '../../support/fixture.js'
import { iso } from '../../support/instant.js'

const fallback = iso('2026-05-04T05:00:00Z')

describe('readWeatherFile', () => {
  it.each([
    ['metno_complete', 'met', '2020-07-20T01:30:57Z'],
    ['metno_compact', 'met', '2020-07-20T01:30:57Z'],
    ['nws_gridpoints', 'nws', '2024-02-20T15:15:12Z'],
    ['open-meteo_forecast', 'open-meteo', '2026-05-04T05:00:00Z']
  ])('knows %s by its shape', (name, source, issuedAt) => {
    const forecast = readWeatherFile(fixture(`weather/${name}.json`), fallback)
    expect(forecast).toMatchObject({ source, issuedAt: iso(issuedAt), sample: false })
    expect(forecast.hours.length).toBeGreaterThan(5)
    expect(forecast.sha256).toMatch(/^[0-9a-f]{64}$/)
  })

  it('reads a file with a byte order mark', () => {
    expect(readWeatherFile(`\uFEFF${fixture('weather/metno_compact.json')}`, fallback).source).toBe('met')
  })

  // Shrunk: refusals that repeated a unit, a name or a reason as long as the answer.
  it.each([
    JSON.stringify({ utc_offset_seconds: 0, hourly_units: { temperature_2m: 'x'.repeat(5000) }, hourly: { time: [], temperature_2m: [] } }),
    JSON.stringify({ utc_offset_seconds: 0, hourly_units: { ['x'.repeat(5000)]: 1 }, hourly: { time: [], temperature_2m: [] } }),
    JSON.stringify({ error: true, reason: 'x '.repeat(5000) })
  ])('says it in a few words whatever stands in it', (text) => {
    const said = (() => {
      try {
        return String(readWeatherFile(text, fallback).source)
      } catch (error) {
        return (error as Error).message
      }
    })()
    expect(said).toMatch(/^(Open-Meteo forecast is damaged|weather file holds an error of the service): /)
    expect(said.length).toBeLessThan(600)
  })

  it.each([
    ['', /not JSON/],
    ['half {', /not JSON/],
    ['null', /none of/],
    ['[]', /none of/],
    ['{"properties":{}}', /none of/],
    ['{"properties":{"meta":{},"timeseries":[]}}', /MET Norway forecast holds no hours/],
    ['{"properties":{"timeseries":"soon"}}', /MET Norway forecast is damaged: properties\.meta/],
    [
      '{"properties":{"temperature":{"uom":"wmoUnit:degC","values":[{"validTime":"x","value":1}]}}}',
      /US NWS forecast is damaged: .*not an interval: x/
    ],
    ['{"properties":{"temperature":{"values":[]}}}', /US NWS forecast holds no hours/],
    ['{"hourly":{"time":[]}}', /Open-Meteo forecast is damaged/],
    [fixture('weather/open-meteo_error_429.json'), /error of the service: Minutely API request limit exceeded/]
  ])('says what is wrong with %s', (text, message) => {
    expect(() => readWeatherFile(text, fallback)).toThrow(WeatherFileError)
    expect(() => readWeatherFile(text, fallback)).toThrow(message)
  })
})
