import nock from 'nock'
import { describe, expect, it } from 'vitest'
import { fetchNwsAlerts } from '../../../../src/adapters/weather/nws/alerts.js'
import { nwsAlerts } from '../../../../src/adapters/weather/nws/source.js'
import { fixture } from '../../../support/fixture.js'
import { guardHttp } from '../../../support/http.js'
import { iso } from '../../../support/instant.js'
import { downOf } from '../../../support/source-down.js'

guardHttp()

const host = 'https://weather.example'
const now = iso('2024-02-20T15:30:00Z')
const dayS = 86_400
const body = fixture('weather/nws_alerts.json')
const modified = 'Tue, 20 Feb 2024 15:20:12 GMT'
const asked = { baseUrl: host, contact: 'ops@crew.example', version: '9.8.7', fetch, lat: 33.52, lon: -86.81, note: null, now }
const note = JSON.stringify({ coveredUntil: now + dayS, lastModified: modified })

const mockPoint = () => nock(host).get('/points/33.52,-86.81')
const mockAlerts = () => nock(host).get('/alerts/active?point=33.52,-86.81')

/** The first alert of the recorded answer with other fields. */
function answerOf(...changes: readonly object[]): string {
  const { features } = JSON.parse(body)
  return JSON.stringify({ features: changes.map((change) => ({ properties: { ...features[0].properties, ...change } })) })
}

async function allOf(text: string) {
  mockAlerts().reply(200, text)
  const got = await fetchNwsAlerts({ ...asked, note })
  return got.kind === 'fresh' ? got.all : null
}

describe('fetchNwsAlerts', () => {
  it('asks whether the place is covered, then for its alerts, and says who asks', async () => {
    const reqheaders = { 'user-agent': 'seamhand/9.8.7 ops@crew.example', accept: 'application/geo+json' }
    nock(host, { reqheaders }).get('/points/33.52,-86.81').reply(200, fixture('weather/nws_points.json'))
    nock(host, { reqheaders, badheaders: ['if-modified-since'] })
      .get('/alerts/active?point=33.52,-86.81')
      .reply(200, body, { 'Last-Modified': modified, 'Cache-Control': 'public, max-age=30' })
    const got = await fetchNwsAlerts(asked)
    expect(got).toMatchObject({ kind: 'fresh', expiresAt: now + 240 })
    if (got.kind !== 'fresh') throw new Error('not fresh')
    expect(JSON.parse(got.note ?? '')).toEqual({ coveredUntil: now + 30 * dayS, lastModified: modified })
    expect(got.all).toEqual([
      {
        id: 'urn:oid:2.49.0.1.840.0.invented.2.001.1',
        replaces: ['urn:oid:2.49.0.1.840.0.invented.1.001.1'],
        event: 'Severe Thunderstorm Warning',
        severity: 'severe',
        urgency: 'immediate',
        certainty: 'observed',
        from: iso('2024-02-20T15:20:00Z'),
        to: iso('2024-02-20T16:15:00Z'),
        expiresAt: iso('2024-02-20T16:15:00Z'),
        headline: 'Severe Thunderstorm Warning issued February 20 at 9:20AM CST until February 20 at 10:15AM CST by NWS Invented Office',
        instruction: 'INVENTED. Move to an interior room on the lowest floor of a building.'
      },
      expect.objectContaining({
        event: 'Wind Advisory',
        from: iso('2024-02-20T18:00:00Z'),
        to: iso('2024-02-21T00:00:00Z'),
        expiresAt: iso('2024-02-20T17:00:00Z'),
        headline: null,
        instruction: null
      })
    ])
  })

  it('asks conditionally where an answer is kept, and takes 304 for unchanged', async () => {
    nock(host, { reqheaders: { 'if-modified-since': modified } })
      .get('/alerts/active?point=33.52,-86.81')
      .reply(304, '', { 'Cache-Control': 'max-age=900' })
    expect(await fetchNwsAlerts({ ...asked, note })).toEqual({ kind: 'unchanged', expiresAt: now + 300 })
  })

  it('asks anew whether the place is covered where what is kept is old or no note', async () => {
    for (const old of [JSON.stringify({ coveredUntil: now, lastModified: modified }), 'no note']) {
      mockPoint().reply(200, '{}')
      mockAlerts().reply(200, '{"features":[]}')
      expect(await fetchNwsAlerts({ ...asked, note: old })).toMatchObject({ kind: 'fresh', all: [] })
    }
  })

  it('an answer without alerts is known to be none', async () => {
    expect(await allOf('{"features":[]}')).toEqual([])
  })

  it('a place that is not covered is asked about once a week, and has no alerts to be known', async () => {
    mockPoint().reply(404, '{"title":"Data Unavailable For Requested Point"}')
    expect(await fetchNwsAlerts(asked)).toEqual({ kind: 'fresh', all: null, expiresAt: now + 7 * dayS, note: null })
  })

  it('leaves out what the answer itself cancels or replaces, and what is a drill', async () => {
    const references = [{ identifier: 'a' }]
    expect(await allOf(answerOf({ id: 'a' }, { id: 'b', messageType: 'Cancel', references }))).toEqual([])
    expect(await allOf(answerOf({ id: 'b', messageType: 'Update', references }, { id: 'a' }))).toMatchObject([{ id: 'b', replaces: ['a'] }])
    for (const status of ['Test', 'Exercise', 'System', 'Draft']) expect(await allOf(answerOf({ status }))).toEqual([])
    // An error message about another one cancels nothing.
    expect(await allOf(answerOf({ id: 'a' }, { id: 'b', messageType: 'Error', references }))).toMatchObject([{ id: 'a' }])
  })

  it('takes what it cannot read of how bad it is for unknown, never for harmless', async () => {
    const got = await allOf(answerOf({ id: 'a', severity: 'Dreadful' }, { id: 'b', severity: null }, { id: 'c', severity: 'Extreme' }))
    expect(got?.map(({ severity }) => severity)).toEqual(['unknown', 'unknown', 'extreme'])
  })

  it('keeps texts to one line of bounded length', async () => {
    const [alert] = (await allOf(answerOf({ event: `Dust\n\t ${'x'.repeat(500)}`, headline: '  ', ends: null, onset: null }))) ?? []
    expect(alert?.event).toHaveLength(120)
    expect(alert).toMatchObject({ headline: null, from: iso('2024-02-20T15:20:00Z'), to: iso('2024-02-20T16:15:00Z') })
  })
})

describe('alerts that are not to be had', () => {
  it.each([
    [429, 900],
    [403, 3600],
    [500, 300],
    [503, 300]
  ])('on %i, for the point or the alerts', async (status, afterS) => {
    mockPoint().reply(status, '{"title":"Oops"}')
    expect(await downOf(fetchNwsAlerts(asked))).toMatchObject({ status, retryAt: now + afterS })
    mockAlerts().reply(status, '{"title":"Oops"}')
    expect(await downOf(fetchNwsAlerts({ ...asked, note }))).toMatchObject({
      status,
      retryAt: now + afterS,
      message: `US NWS answered ${status}: Oops`
    })
  })

  it.each([
    ['no JSON', '<html>'],
    ['half of it', body.slice(0, 900)],
    ['no features', '{}'],
    ['an alert that does not say what it is', answerOf({ event: ' ' })],
    ['an alert that never is out of date', answerOf({ expires: null })],
    ['an alert without its id', answerOf({ id: undefined })]
  ])('when the answer is %s', async (_story, text) => {
    mockAlerts().reply(200, text)
    expect(await downOf(fetchNwsAlerts({ ...asked, note }))).toMatchObject({ status: 200, retryAt: now + 300 })
  })

  it('when nobody answers', async () => {
    mockAlerts().replyWithError(Object.assign(new Error('secret address'), { code: 'ECONNRESET' }))
    const down = await downOf(fetchNwsAlerts({ ...asked, note }))
    expect(down.status).toBeNull()
    expect(down.message).not.toContain('secret')
  })
})

it('covers what the forecasts of the service may cover, and no other', () => {
  const source = nwsAlerts({ baseUrl: null, contact: 'ops@crew.example', version: '1' })
  expect(source.covers(33.52, -86.81)).toBe(true)
  expect(source.covers(50, 8)).toBe(false)
})
