import nock from 'nock'
import { describe, expect, it } from 'vitest'
import { fetchNws } from '../../../../src/adapters/weather/nws/index.js'
import { nwsSource } from '../../../../src/adapters/weather/nws/source.js'
import { fixture } from '../../../support/fixture.js'
import { guardHttp } from '../../../support/http.js'
import { iso } from '../../../support/instant.js'
import { downOf } from '../../../support/source-down.js'
import { truth } from '../../../support/truth.js'

guardHttp()

const host = 'https://weather.example'
const now = iso('2024-02-20T15:30:00Z')
const dayS = 86_400
const points = fixture('weather/nws_points.json')
const body = fixture('weather/nws_gridpoints.json')
const modified = 'Tue, 20 Feb 2024 15:15:12 GMT'
const asked = { baseUrl: host, contact: 'ops@crew.example', version: '9.8.7', fetch, lat: 33.52, lon: -86.81, note: null, now }

const mockPoint = (path = '/points/33.52,-86.81') => nock(host).get(path)
const mockGrid = (path = '/gridpoints/BMX/59,84') => nock(host).get(path)

/** What is kept of an answer, as it is handed back. */
function noteOf(values: object = {}): string {
  return JSON.stringify({ grid: 'BMX/59,84', gridUntil: now + dayS, lastModified: modified, ...values })
}

/** An answer of the gridpoint with only these temperatures. */
function gridOf(values: readonly object[]): string {
  return JSON.stringify({ properties: { temperature: { uom: 'wmoUnit:degC', values } } })
}

describe('fetchNws', () => {
  it('asks for the grid square of the place, says who asks, and takes the time of the update as that of the issue', async () => {
    const reqheaders = { 'user-agent': 'seamhand/9.8.7 ops@crew.example', accept: 'application/geo+json' }
    nock(host, { reqheaders, badheaders: ['if-modified-since'] })
      .get('/points/33.52,-86.81')
      .reply(200, points, { 'Cache-Control': 'public, max-age=172800' })
    nock(host, { reqheaders, badheaders: ['if-modified-since'] })
      .get('/gridpoints/BMX/59,84')
      .reply(200, body, { 'Cache-Control': 'public, max-age=460, s-maxage=3600', 'Last-Modified': modified })
    const got = await fetchNws(asked)
    // Reference row wea-101: header values of the payload.
    const [row] = truth('weather', 'header values of the payload')
    expect(got).toMatchObject({ kind: 'fresh', expiresAt: now + 460, body, note: null })
    if (got.kind !== 'fresh') throw new Error('not fresh')
    expect(got.forecast).toMatchObject({ source: 'nws', issuedAt: iso(String(row?.expected.updateTime?.value)), sample: false })
    expect(JSON.parse(got.lastModified ?? '')).toEqual({ grid: 'BMX/59,84', gridUntil: now + 2 * dayS, lastModified: modified })
    // Reference row wea-104: 3.704 km/h, the 2 knots of the payload.
    expect(got.forecast.hours.find((hour) => hour.at === iso('2024-02-20T12:00:00Z'))).toMatchObject({ windKmh: 3.704, rhPct: 82, sunWm2: null })
  })

  it.each([
    [33.123456789, -86.00001, '/points/33.1235,-86'],
    [13.4, 144.79999, '/points/13.4,144.8']
  ])('sends at most 4 decimals of %d, %d, without zeros at the end', async (lat, lon, path) => {
    mockPoint(path).reply(200, points)
    mockGrid().reply(200, body)
    expect((await fetchNws({ ...asked, lat, lon })).kind).toBe('fresh')
  })

  it('asks under the address of the settings, whatever host the service names', async () => {
    nock(host).get('/mirror/points/33.52,-86.81').reply(200, points)
    nock(host).get('/mirror/gridpoints/BMX/59,84').reply(200, body)
    expect((await fetchNws({ ...asked, baseUrl: `${host}/mirror/` })).kind).toBe('fresh')
  })

  it('asks for a known square at once and conditionally, and takes 304 for unchanged', async () => {
    nock(host, { reqheaders: { 'if-modified-since': modified } })
      .get('/gridpoints/BMX/59,84')
      .reply(304, '', { Expires: 'Tue, 20 Feb 2024 15:50:00 GMT' })
    expect(await fetchNws({ ...asked, note: noteOf() })).toEqual({ kind: 'unchanged', expiresAt: iso('2024-02-20T15:50:00Z') })
  })

  it('keeps the square when its forecast changed', async () => {
    mockGrid().reply(200, body, { 'Last-Modified': 'Tue, 20 Feb 2024 15:25:00 GMT' })
    const got = await fetchNws({ ...asked, note: noteOf() })
    expect(got.kind === 'fresh' && JSON.parse(got.lastModified ?? '')).toEqual(JSON.parse(noteOf({ lastModified: 'Tue, 20 Feb 2024 15:25:00 GMT' })))
  })

  it('asks again which square it is when the known one is gone', async () => {
    mockGrid('/gridpoints/OKX/33,35').reply(404, '{"title":"Marine Forecast Not Supported"}')
    mockPoint().reply(200, points)
    mockGrid().reply(200, body)
    const got = await fetchNws({ ...asked, note: noteOf({ grid: 'OKX/33,35' }) })
    expect(got.kind === 'fresh' && JSON.parse(got.lastModified ?? '')).toMatchObject({ grid: 'BMX/59,84' })
  })

  it.each([
    ['is old', noteOf({ gridUntil: now })],
    ['is no note', modified],
    ['names another address', noteOf({ grid: '../elsewhere' })],
    ['is half a note', '{"grid":"BMX/59,84"}']
  ])('asks anew where what was kept %s', async (_story, note) => {
    mockPoint().reply(200, points)
    nock(host, { badheaders: ['if-modified-since'] })
      .get('/gridpoints/BMX/59,84')
      .reply(200, body)
    expect((await fetchNws({ ...asked, note })).kind).toBe('fresh')
  })

  it.each([
    ['nothing', {}, 1800],
    ['an age that is half over', { 'Cache-Control': 'max-age=900', Age: '300' }, 600],
    ['both, and the later counts', { 'Cache-Control': 'max-age=120', Expires: 'Tue, 20 Feb 2024 15:40:00 GMT' }, 600],
    ['the past', { Expires: 'Tue, 20 Feb 2024 15:00:00 GMT' }, 60],
    ['only what shared caches may do', { 'Cache-Control': 's-maxage=3600' }, 1800],
    ['a year', { 'Cache-Control': 'max-age=31536000' }, 6 * 3600]
  ])('does not ask again at once when the answer says %s', async (_story, headers, afterS) => {
    mockGrid().reply(200, body, headers)
    expect(await fetchNws({ ...asked, note: noteOf() })).toMatchObject({ expiresAt: now + afterS })
  })
})

describe('a place that is not covered', () => {
  it.each([
    [404, '{"title":"Data Unavailable For Requested Point","status":404}'],
    [200, '{"properties":{"forecastGridData":null}}']
  ])('is remembered for a week: %i', async (status, text) => {
    mockPoint().reply(status, text)
    const down = await downOf(fetchNws(asked))
    expect(down).toMatchObject({ status: 404, retryAt: now + 7 * dayS })
    expect(down.message).toContain('does not cover')
  })
})

describe('NWS is down', () => {
  it.each([
    [400, 3600],
    [403, 3600],
    [429, 900],
    [500, 300],
    [502, 300],
    [503, 300]
  ])('on %i for the point or the square, and says why and when to ask again', async (status, afterS) => {
    const told = `{"type":"https://api.weather.gov/problems/X","title":"Unexpected\\nProblem","status":${status}}`
    mockPoint().reply(status, told, { 'Content-Type': 'application/problem+json' })
    const down = await downOf(fetchNws(asked))
    expect(down).toMatchObject({ status, retryAt: now + afterS, message: `US NWS answered ${status}: Unexpected Problem` })
    mockGrid().reply(status, '<html>')
    expect(await downOf(fetchNws({ ...asked, note: noteOf() }))).toMatchObject({
      status,
      retryAt: now + afterS,
      message: `US NWS answered ${status}`
    })
  })

  it.each([
    ['120', 120],
    ['Tue, 20 Feb 2024 16:00:00 GMT', 1800]
  ])('and honours Retry-After %s', async (told, afterS) => {
    mockPoint().reply(429, '', { 'Retry-After': told })
    expect((await downOf(fetchNws(asked))).retryAt).toBe(now + afterS)
  })

  it('on 404 for a square just named, and on 304 that was not asked for', async () => {
    mockPoint().reply(200, points)
    mockGrid().reply(404, '{"title":"Not Found"}')
    expect(await downOf(fetchNws(asked))).toMatchObject({ status: 404, retryAt: now + 3600 })
    mockGrid().reply(304, '')
    expect(await downOf(fetchNws({ ...asked, note: noteOf({ lastModified: null }) }))).toMatchObject({ status: 304 })
  })

  it.each([
    ['', /not JSON/],
    [points.slice(0, 300), /not JSON/],
    ['{}', /no grid square/],
    ['{"properties":{"forecastGridData":"https://elsewhere.example/gridpoints/../../secret"}}', /no grid square/],
    ['{"properties":{"forecastGridData":"https://elsewhere.example/"}}', /no grid square/]
  ])('on a point that names no square: %.40s', async (text, message) => {
    mockPoint().reply(200, text)
    const down = await downOf(fetchNws(asked))
    expect(down.message).toMatch(message)
    expect(down).toMatchObject({ status: 200, retryAt: now + 300 })
  })

  it.each([
    [body.slice(0, 2000), /not JSON/],
    ['{"properties":{}}', /malformed: properties\.temperature/],
    [gridOf([]), /no hours/],
    [gridOf([{ validTime: '2024-02-20T15:00:00Z/PT2H', value: null }]), /no temperature/],
    [gridOf([{ validTime: 'tomorrow', value: 1 }]), /malformed/]
  ])('on a body that is no forecast: %.40s', async (text, message) => {
    mockGrid().reply(200, text)
    const down = await downOf(fetchNws({ ...asked, note: noteOf() }))
    expect(down.message).toMatch(message)
    expect(down).toMatchObject({ status: 200, retryAt: now + 300 })
  })

  it('when it cannot be reached, is slow, or sends elsewhere', async () => {
    mockPoint().replyWithError(Object.assign(new Error('no'), { code: 'ECONNREFUSED' }))
    expect((await downOf(fetchNws(asked))).message).toBe('US NWS cannot be reached: ECONNREFUSED')
    mockPoint().delay(5000).reply(200, points)
    expect(await downOf(fetchNws({ ...asked, timeoutMs: 20 }))).toMatchObject({
      status: null,
      retryAt: now + 300,
      message: 'US NWS cannot be reached: TimeoutError'
    })
    mockPoint().reply(301, '', { Location: 'https://elsewhere.example/' })
    expect(await downOf(fetchNws(asked))).toMatchObject({ status: null, retryAt: now + 300 })
  })
})

describe('nwsSource', () => {
  const source = nwsSource({ baseUrl: null, contact: 'ops@crew.example', version: '1' })

  it('asks the public service unless another address is given', async () => {
    nock('https://api.weather.gov').get('/points/33.52,-86.81').reply(200, points)
    nock('https://api.weather.gov').get('/gridpoints/BMX/59,84').reply(200, body)
    expect((await source.fetch(33.52, -86.81, null, now)).kind).toBe('fresh')
  })

  // Coordinates of cities from memory.
  it.each([
    ['Birmingham, Alabama', 33.52, -86.81, true],
    ['Key West', 24.56, -81.78, true],
    ['Anchorage', 61.22, -149.9, true],
    ['Attu', 52.9, 172.9, true],
    ['Honolulu', 21.31, -157.86, true],
    ['San Juan', 18.47, -66.11, true],
    ['Guam', 13.44, 144.79, true],
    ['Pago Pago', -14.28, -170.7, true],
    ['Berlin', 52.52, 13.4, false],
    ['Sydney', -33.87, 151.21, false],
    ['Mexico City', 19.43, -99.13, false],
    ['Edmonton', 53.55, -113.49, false],
    ['nowhere', Number.NaN, Number.NaN, false]
  ])('%s: %d, %d → %s', (_name, lat, lon, covered) => {
    expect(source.covers(lat, lon)).toBe(covered)
  })
})
