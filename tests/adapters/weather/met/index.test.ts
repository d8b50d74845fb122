import nock from 'nock'
import { describe, expect, it } from 'vitest'
import { fetchMet } from '../../../../src/adapters/weather/met/index.js'
import { metSource } from '../../../../src/adapters/weather/met/source.js'
import { fixture } from '../../../support/fixture.js'
import { guardHttp } from '../../../support/http.js'
import { iso } from '../../../support/instant.js'
import { downOf } from '../../../support/source-down.js'
import { truth } from '../../../support/truth.js'

guardHttp()

const host = 'https://weather.example'
const now = iso('2020-07-20T11:45:00Z')
const body = fixture('weather/metno_complete.json')
const headers = JSON.parse(fixture('weather/metno_complete_headers.json'))
const plainHeaders = { Expires: headers.Expires, 'Last-Modified': headers['Last-Modified'] }
const asked = { baseUrl: `${host}/lf/2.0`, contact: 'ops@crew.example', version: '9.8.7', fetch, lat: 51.5, lon: -0.1, lastModified: null, now }

function mock(lat = '51.5', lon = '-0.1') {
  return nock(host).get('/lf/2.0/complete').query({ lat, lon })
}

describe('fetchMet', () => {
  it('says who asks, and keeps what the answer says of its age', async () => {
    nock(host, { reqheaders: { 'user-agent': 'seamhand/9.8.7 ops@crew.example' }, badheaders: ['if-modified-since'] })
      .get('/lf/2.0/complete')
      .query({ lat: '51.5', lon: '-0.1' })
      .reply(200, body, plainHeaders)
    const got = await fetchMet(asked)
    // Reference row wea-069: headers of the stored answer.
    const [row] = truth('weather', 'headers of the stored response')
    expect(got).toMatchObject({ kind: 'fresh', expiresAt: iso('2020-07-20T12:16:23Z'), lastModified: row?.expected['Last-Modified']?.value, body })
    expect(got.kind === 'fresh' && got.forecast).toMatchObject({ source: 'met', issuedAt: iso('2020-07-20T01:30:57Z'), sample: false })
  })

  it.each([
    [51.123456789, -0.00001, '51.1235', '0'],
    [-33.98766, 151.2, '-33.9877', '151.2']
  ])('sends at most 4 decimals of %d, %d', async (lat, lon, latSent, lonSent) => {
    // Reference row wea-052: 5 decimals or more are refused.
    expect(truth('weather', 'at most 4 decimals')[0]?.expected.decimals?.value).toBe(4)
    mock(latSent, lonSent).reply(200, body)
    await fetchMet({ ...asked, lat, lon })
  })

  it('takes 203 for a forecast, and tells the operator', async () => {
    // Reference row wea-055: 203 is a deprecated or beta product.
    expect(truth('weather', 'status code').find((row) => row.inputs.status?.value === 203)?.expected.meaning?.value).toContain('deprecated')
    mock().reply(203, body, plainHeaders)
    const got = await fetchMet(asked)
    expect(got.kind === 'fresh' && got.note).toMatch(/203.*deprecated/)
    mock().reply(200, body, plainHeaders)
    expect(await fetchMet(asked)).toMatchObject({ note: null })
  })

  it('asks again with If-Modified-Since, word for word, and takes 304 for unchanged', async () => {
    nock(host, { reqheaders: { 'if-modified-since': headers['Last-Modified'] } })
      .get('/lf/2.0/complete')
      .query(true)
      .reply(304, '', { Expires: 'Mon, 20 Jul 2020 12:40:00 GMT' })
    expect(await fetchMet({ ...asked, lastModified: headers['Last-Modified'] })).toEqual({
      kind: 'unchanged',
      expiresAt: iso('2020-07-20T12:40:00Z')
    })
  })

  it.each([
    ['none', {}, 1800],
    ['no date', { Expires: '0' }, 1800],
    ['in the past', { Expires: 'Mon, 20 Jul 2020 11:00:00 GMT' }, 60],
    ['years ahead', { Expires: 'Mon, 20 Jul 2099 11:00:00 GMT' }, 6 * 3600]
  ])('does not ask again at once when Expires is %s', async (_, told, afterS) => {
    mock().reply(200, body, told)
    expect(await fetchMet(asked)).toMatchObject({ expiresAt: now + afterS })
  })

  it.each([
    [304, 3600],
    [400, 3600],
    [403, 3600],
    [404, 3600],
    [422, 3600],
    [429, 900],
    [500, 300],
    [502, 300],
    [503, 300]
  ])('is down on %i, and says when to ask again', async (status, afterS) => {
    mock().reply(status, status === 304 ? '' : body)
    expect(await downOf(fetchMet(asked))).toMatchObject({ status, retryAt: now + afterS })
  })

  it.each([
    ['120', 120],
    ['Mon, 20 Jul 2020 12:00:00 GMT', 900],
    ['Mon, 20 Jul 2020 10:00:00 GMT', 300],
    ['soon', 300]
  ])('honours Retry-After %s', async (told, afterS) => {
    mock().reply(503, '', { 'Retry-After': told })
    expect((await downOf(fetchMet(asked))).retryAt).toBe(now + afterS)
  })

  it.each([
    ['', /not JSON/],
    [body.slice(0, 2000), /not JSON/],
    ['<html>', /not JSON/],
    ['{"properties":{"meta":{},"timeseries":[]}}', /no hours/],
    ['{"properties":{"meta":{},"timeseries":[{"time":"x","data":{}}]}}', /malformed: properties\.timeseries\.0/],
    [
      '{"properties":{"meta":{},"timeseries":[{"time":"2020-07-20T12:00:00Z","data":{"instant":{"details":{"air_temperature":null}}}}]}}',
      /no temperature/
    ]
  ])('is down on a body that is no forecast: %.20s', async (text, message) => {
    mock().reply(200, text)
    const down = await downOf(fetchMet(asked))
    expect(down.message).toMatch(message)
    expect(down).toMatchObject({ status: 200, retryAt: now + 300 })
  })

  it.each(['ECONNREFUSED', 'ENOTFOUND', 'ECONNRESET'])('is down on %s', async (code) => {
    mock().replyWithError(Object.assign(new Error(code), { code }))
    expect(await downOf(fetchMet(asked))).toMatchObject({ status: null, retryAt: now + 300 })
  })

  it('is down when the answer does not come in time', async () => {
    mock().delay(5000).reply(200, body)
    expect(await downOf(fetchMet({ ...asked, timeoutMs: 20 }))).toMatchObject({ status: null, retryAt: now + 300 })
  })

  it('does not follow to another address', async () => {
    mock().reply(302, '', { Location: 'https://elsewhere.example/' })
    expect((await downOf(fetchMet(asked))).retryAt).toBe(now + 300)
  })
})

describe('metSource', () => {
  it('asks the public service unless another address is given', async () => {
    nock('https://api.met.no').get('/weatherapi/locationforecast/2.0/complete').query({ lat: '50', lon: '8' }).reply(200, body)
    const source = metSource({ baseUrl: null, contact: 'ops@crew.example', version: '1' })
    expect(source.covers(-90, 180)).toBe(true)
    expect((await source.fetch(50, 8, null, now)).kind).toBe('fresh')
  })
})
