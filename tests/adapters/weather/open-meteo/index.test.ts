import nock from 'nock'
import { describe, expect, it } from 'vitest'
import { fetchOpenMeteo } from '../../../../src/adapters/weather/open-meteo/index.js'
import { openMeteoSource } from '../../../../src/adapters/weather/open-meteo/source.js'
import { fixture } from '../../../support/fixture.js'
import { guardHttp } from '../../../support/http.js'
import { iso } from '../../../support/instant.js'
import { downOf } from '../../../support/source-down.js'
import { truth } from '../../../support/truth.js'

guardHttp()

const host = 'https://weather.example'
const now = iso('2026-05-04T03:10:20Z')
const body = fixture('weather/open-meteo_forecast.json')
const asked = { baseUrl: `${host}/v1`, key: null, contact: 'ops@crew.example', version: '9.8.7', fetch, lat: 52.52, lon: 13.42, now }

const mock = () => nock(host).get('/v1/forecast').query(true)

/** An answer in UTC with these values for two hours. */
function answer(hourly: object, units: object = {}): string {
  return JSON.stringify({
    utc_offset_seconds: 0,
    hourly_units: { temperature_2m: '°C', ...units },
    hourly: { time: ['2026-05-04T03:00', '2026-05-04T04:00'], ...hourly }
  })
}

describe('fetchOpenMeteo', () => {
  it('asks in UTC for two days back and four ahead, and for what is read', async () => {
    let query: Record<string, unknown> = {}
    nock(host, { reqheaders: { 'user-agent': 'seamhand/9.8.7 ops@crew.example' } })
      .get('/v1/forecast')
      .query((told) => {
        query = told
        return true
      })
      .reply(200, body)
    const got = await fetchOpenMeteo(asked)
    expect(query).toMatchObject({ latitude: '52.52', longitude: '13.42', timezone: 'UTC', past_days: '2', forecast_days: '4' })
    expect(query).not.toHaveProperty('apikey')
    const names = String(query.hourly).split(',')
    // Reference rows wea-001 … wea-012, names of the hourly variables. Rain is part of precipitation.
    const documented = truth('weather', 'hourly variable').map((row) => String(row.inputs.name?.value))
    expect(documented.filter((name) => !names.includes(name)).sort()).toEqual(['rain'])
    expect(got).toMatchObject({ kind: 'fresh', expiresAt: now + 3600, lastModified: null, body, note: null })
    // It does not say when it was issued: the time of the fetch.
    expect(got.kind === 'fresh' && got.forecast).toMatchObject({ source: 'open-meteo', issuedAt: now, sample: false })
  })

  it('reads the hours of its answer as UTC, sunshine among them', async () => {
    mock().reply(200, body)
    const got = await fetchOpenMeteo(asked)
    const hours = got.kind === 'fresh' ? got.forecast.hours : []
    // The stored answer is in local time, 2 h ahead of UTC.
    expect(hours.find((hour) => hour.at === iso('2026-05-04T08:00:00Z'))).toMatchObject({ airC: 12.6, gustKmh: 24.1, sunWm2: 431 })
    mock().reply(200, answer({ temperature_2m: [7, 8] }))
    const utc = await fetchOpenMeteo(asked)
    expect(utc.kind === 'fresh' && utc.forecast.hours.map(({ at }) => at)).toEqual([iso('2026-05-04T03:00:00Z'), iso('2026-05-04T04:00:00Z')])
  })

  it('keeps null for null and for what is impossible', async () => {
    mock().reply(200, answer({ temperature_2m: [null, 8], shortwave_radiation: [null, 9999] }, { shortwave_radiation: 'W/m²' }))
    const got = await fetchOpenMeteo(asked)
    expect(got.kind === 'fresh' && got.forecast.hours.map(({ airC, sunWm2, rainMm }) => [airC, sunWm2, rainMm])).toEqual([
      [null, null, null],
      [8, null, null]
    ])
  })
})

describe('Open-Meteo is down', () => {
  it('on 400, with its reason', async () => {
    mock().reply(400, fixture('weather/open-meteo_error_400.json'))
    const down = await downOf(fetchOpenMeteo(asked))
    expect(down).toMatchObject({ status: 400, retryAt: now + 3600 })
    expect(down.message).toMatch(/^Open-Meteo answered 400: Parameter 'latitude'/)
  })

  it.each([
    ['Minutely API request limit exceeded. Please try again in one minute.', '2026-05-04T03:11:20Z'],
    ['Hourly API request limit exceeded. Please try again in the next hour.', '2026-05-04T04:00:00Z'],
    ['Daily API request limit exceeded. Please try again tomorrow.', '2026-05-05T00:00:00Z'],
    ['Enough.', '2026-05-04T03:25:20Z']
  ])('on 429 until the limit named ends: %s', async (reason, until) => {
    // Wording: reference row wea-018.
    mock().reply(429, JSON.stringify({ error: true, reason }))
    expect(await downOf(fetchOpenMeteo(asked))).toMatchObject({ status: 429, retryAt: iso(until) })
  })

  it('on 429 as stored, and until Retry-After where there is one', async () => {
    mock().reply(429, fixture('weather/open-meteo_error_429.json'))
    expect((await downOf(fetchOpenMeteo(asked))).retryAt).toBe(now + 60)
    mock().reply(429, fixture('weather/open-meteo_error_429.json'), { 'Retry-After': '300' })
    expect((await downOf(fetchOpenMeteo(asked))).retryAt).toBe(now + 300)
  })

  it.each([
    [304, 3600],
    [403, 3600],
    [404, 3600],
    [500, 300],
    [503, 300]
  ])('on %i', async (status, afterS) => {
    mock().reply(status, '')
    expect(await downOf(fetchOpenMeteo(asked))).toMatchObject({ status, retryAt: now + afterS, message: `Open-Meteo answered ${status}` })
  })

  it.each([
    ['', /not JSON/],
    [body.slice(0, 900), /not JSON/],
    ['[]', /malformed/],
    [fixture('weather/open-meteo_error_400.json'), /malformed/],
    [answer({ time: [], temperature_2m: [] }), /no hours/],
    [answer({ temperature_2m: [null, null] }), /no temperature/],
    [answer({ temperature_2m: [1] }), /1 values for 2 times/],
    [answer({ temperature_2m: [1, 2] }, { temperature_2m: 'warm' }), /unknown unit warm/],
    [answer({ time: ['2026-05-04T03:00', '2026-02-30T04:00'], temperature_2m: [1, 2] }), /does not exist/]
  ])('on a body that is no forecast: %.40s', async (text, message) => {
    mock().reply(200, text)
    const down = await downOf(fetchOpenMeteo(asked))
    expect(down.message).toMatch(message)
    expect(down).toMatchObject({ status: 200, retryAt: now + 300 })
  })

  it('when it cannot be reached, is slow, or sends elsewhere', async () => {
    mock().replyWithError(Object.assign(new Error('no'), { code: 'ENOTFOUND' }))
    expect((await downOf(fetchOpenMeteo(asked))).message).toBe('Open-Meteo cannot be reached: ENOTFOUND')
    mock().delay(5000).reply(200, body)
    expect(await downOf(fetchOpenMeteo({ ...asked, timeoutMs: 20 }))).toMatchObject({ status: null, retryAt: now + 300 })
    mock().reply(302, '', { Location: 'https://elsewhere.example/' })
    expect(await downOf(fetchOpenMeteo(asked))).toMatchObject({ status: null })
  })
})

describe('its key', () => {
  const key = 'very-secret-1234'

  it('goes along as a parameter and stands in no error', async () => {
    const mine = () =>
      nock(host)
        .get('/v1/forecast')
        .query((told) => told.apikey === key)
    const failures = [
      () => mine().reply(403, JSON.stringify({ error: true, reason: `API key ${key} is invalid` })),
      () => mine().reply(429, `{"error":true,"reason":"${key} ${key}"}`),
      () => mine().replyWithError(new Error(`cannot reach ${host}/v1/forecast?apikey=${key}`)),
      () => mine().replyWithError(Object.assign(new Error('x'), { code: 'ECONNRESET', url: `?apikey=${key}` })),
      () => mine().reply(302, '', { Location: `/?apikey=${key}` }),
      () => mine().reply(200, `<html>${key}`),
      () => mine().reply(200, JSON.stringify({ hourly: key }))
    ]
    for (const fail of failures) {
      fail()
      const down = await downOf(fetchOpenMeteo({ ...asked, key }))
      expect(`${down.message} ${down.stack} ${JSON.stringify(down)} ${down.cause}`).not.toContain(key)
    }
  })
})

describe('openMeteoSource', () => {
  it.each([
    ['the free service', null, null, 'https://api.open-meteo.com', '/v1/forecast'],
    ['that of a paid plan', null, 'k1', 'https://customer-api.open-meteo.com', '/v1/forecast'],
    ['another address', `${host}/own/`, 'k1', host, '/own/forecast']
  ])('asks %s', async (_story, baseUrl, key, at, path) => {
    nock(at)
      .get(path)
      .query((told) => told.apikey === (key ?? undefined))
      .reply(200, body)
    const source = openMeteoSource({ baseUrl, key, contact: 'ops@crew.example', version: '1' })
    expect(source.covers(-90, 180)).toBe(true)
    expect((await source.fetch(52.52, 13.42, null, now)).kind).toBe('fresh')
  })
})
