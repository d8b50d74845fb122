import nock from 'nock'
import { afterEach, describe, expect, it } from 'vitest'
import { openSqlite } from '../../src/adapters/store/open-sqlite.js'
import type { Database } from '../../src/adapters/store/schema.js'
import { readConfig } from '../../src/config.js'
import type { Instant } from '../../src/core/instant.js'
import { prepare } from '../../src/wiring/running.js'
import { wire } from '../../src/wiring/tools.js'
import { liveFrom } from '../../src/wiring/weather.js'
import { temporaryFolder } from '../support/databases.js'
import { fixture } from '../support/fixture.js'
import { guardHttp } from '../support/http.js'
import { iso } from '../support/instant.js'

guardHttp()

const folder = temporaryFolder()
const key = 'very-secret-1234'
const urls = { MET_URL: 'https://met.example', NWS_URL: 'https://nws.example', OPEN_METEO_URL: 'https://om.example' }
const alabama = { lat: 33.521, lon: -86.812, zone: 'America/Chicago', invented: false }
const berlin = { lat: 52.52, lon: 13.42, zone: 'Europe/Berlin', invented: false }
/** 15 minutes after the NWS answer was issued. */
const now = iso('2024-02-20T15:30:12Z')

let database: Database | null = null
let made = 0
afterEach(async () => {
  await database?.close()
  database = null
})

/** Live weather of some settings over a new database, and all that it told the operator. */
async function live(env: Record<string, string>) {
  made += 1
  database = await openSqlite(`${folder()}/${made}`, { server: false })
  const told: unknown[] = []
  const config = readConfig({ SEAMHAND_CONTACT: 'ops@crew.example', ...urls, ...env })
  return { weather: liveFrom(config, database, (what, message) => told.push([what, message])), told }
}

const metAway = (status = 503, headers = {}) => nock(urls.MET_URL).get('/complete').query(true).reply(status, '', headers)
const openMeteo = (at: Instant, asked: Record<string, string> = {}) => {
  const time = [0, 1].map((hour) => new Date((Math.floor(at / 3600) + hour) * 3_600_000).toISOString().slice(0, 16))
  const told = { utc_offset_seconds: 0, hourly_units: { temperature_2m: '°C' }, hourly: { time, temperature_2m: [5, 6] } }
  return nock(urls.OPEN_METEO_URL)
    .get('/forecast')
    .query((query) => query.apikey === asked.apikey)
    .reply(200, JSON.stringify(told))
}
function nws(): void {
  nock(urls.NWS_URL).get('/points/33.52,-86.81').reply(200, fixture('weather/nws_points.json'))
  nock(urls.NWS_URL)
    .get('/gridpoints/BMX/59,84')
    .reply(200, fixture('weather/nws_gridpoints.json'), { 'Cache-Control': 'max-age=600', 'Last-Modified': 'Tue, 20 Feb 2024 15:15:12 GMT' })
}

describe('live weather by the settings', () => {
  it('falls back from MET Norway to NWS to Open-Meteo, keeps what each said, and returns', async () => {
    const { weather, told } = await live({ OPEN_METEO_KEY: key })
    metAway(503, { 'Retry-After': '900' })
    nws()
    expect(await weather.refresh(alabama, now)).toBe('fresh')
    expect(await weather.at(alabama, now)).toMatchObject({ source: 'nws', issuedAt: iso('2024-02-20T15:15:12Z') })

    // Ten minutes later only NWS has expired; it knows its square, and there is nothing new.
    nock(urls.NWS_URL, { reqheaders: { 'if-modified-since': 'Tue, 20 Feb 2024 15:15:12 GMT' } })
      .get('/gridpoints/BMX/59,84')
      .reply(304, '')
    expect(await weather.refresh(alabama, now + 600)).toBe('unchanged')

    // Both away: Open-Meteo is issued when it is fetched, and so the newest.
    const later = now + 3 * 3600
    metAway(429)
    nock(urls.NWS_URL).get('/gridpoints/BMX/59,84').reply(500, '{"title":"Unexpected Problem"}')
    openMeteo(later, { apikey: key })
    expect(await weather.refresh(alabama, later)).toBe('fresh')
    expect(await weather.at(alabama, later)).toMatchObject({ source: 'open-meteo', issuedAt: later })
    // A question about the time before is still answered by what was known then.
    expect(await weather.at(alabama, now)).toMatchObject({ source: 'nws' })

    expect(told).toEqual([
      [{ source: 'met', retryAt: '2024-02-20T15:45:12Z' }, 'MET Norway answered 503'],
      [{ source: 'met', retryAt: '2024-02-20T18:45:12Z' }, 'MET Norway answered 429'],
      [{ source: 'nws', retryAt: '2024-02-20T18:35:12Z' }, 'US NWS answered 500: Unexpected Problem']
    ])
  })

  it('keeps the grid square across a restart', async () => {
    const { weather } = await live({ SEAMHAND_WEATHER: 'nws' })
    nws()
    await weather.refresh(alabama, now)
    const again = liveFrom(
      readConfig({ SEAMHAND_CONTACT: 'ops@crew.example', ...urls, SEAMHAND_WEATHER: 'nws' }),
      database as Database,
      () => undefined
    )
    nock(urls.NWS_URL).get('/gridpoints/BMX/59,84').reply(304, '')
    expect(await again.refresh(alabama, now + 600)).toBe('unchanged')
  })

  it('does not ask NWS about Europe, and remembers where it says that it has nothing', async () => {
    const { weather, told } = await live({ SEAMHAND_WEATHER: 'nws' })
    expect(await weather.refresh(berlin, now)).toBe('down')
    const windsor = { lat: 42.3, lon: -83.02, zone: 'America/Toronto', invented: false }
    nock(urls.NWS_URL).get('/points/42.3,-83.02').reply(404, '{"title":"Data Unavailable For Requested Point"}')
    expect(await weather.refresh(windsor, now)).toBe('down')
    expect(await weather.refresh(windsor, now + 6 * 86_400)).toBe('down')
    expect(told).toEqual([[{ source: 'nws', retryAt: '2024-02-27T15:30:12Z' }, 'US NWS does not cover this place']])
  })

  it('keeps the alerts of NWS where NWS is among the sources, and asks for them once for all sites of a cell', async () => {
    const { weather } = await live({})
    const point = () => nock(urls.NWS_URL).get('/points/33.52,-86.81')
    const active = () => nock(urls.NWS_URL).get('/alerts/active?point=33.52,-86.81')
    point().reply(200, fixture('weather/nws_points.json'))
    active().reply(200, fixture('weather/nws_alerts.json'))
    expect(await weather.alerts(alabama, now)).toEqual({ source: 'nws', asOf: null, all: [] })
    await weather.refreshAlerts([alabama, { ...alabama, lat: 33.519 }, berlin], now, () => false)
    expect(await weather.alerts(alabama, now)).toMatchObject({ source: 'nws', asOf: now, all: [{ severity: 'severe' }, { severity: 'moderate' }] })
    expect(await weather.alerts(berlin, now)).toBeNull()
    active().reply(500, '')
    await weather.refreshAlerts([alabama], now + 300, () => false)
    expect(await weather.alerts(alabama, now + 300)).toMatchObject({ asOf: now, all: [{}, {}] })
    const without = await live({ SEAMHAND_WEATHER: 'met' })
    await without.weather.refreshAlerts([alabama], now, () => false)
    expect(await without.weather.alerts(alabama, now)).toBeNull()
  })

  it.each([
    ['without a key or a word on its use', {}, 'down'],
    ['when its use is said to be commercial', { OPEN_METEO_NON_COMMERCIAL: 'false' }, 'down'],
    ['when its use is said to be non-commercial', { OPEN_METEO_NON_COMMERCIAL: 'true' }, 'fresh'],
    ['with a key', { OPEN_METEO_KEY: key }, 'fresh']
  ])('has Open-Meteo off or on %s', async (_story, env, refreshed) => {
    const { weather } = await live({ SEAMHAND_WEATHER: 'open-meteo', ...env })
    if (refreshed === 'fresh') openMeteo(now, 'OPEN_METEO_KEY' in env ? { apikey: key } : {})
    expect(await weather.refresh(berlin, now)).toBe(refreshed)
  })

  it('asks in the order of the settings, each once', async () => {
    const { weather } = await live({ SEAMHAND_WEATHER: 'open-meteo,met,open-meteo', OPEN_METEO_NON_COMMERCIAL: '1' })
    nock(urls.OPEN_METEO_URL).get('/forecast').query(true).reply(400, fixture('weather/open-meteo_error_400.json'))
    metAway()
    expect(await weather.refresh(berlin, now)).toBe('down')
    openMeteo(now + 3600)
    expect(await weather.refresh(berlin, now + 3600)).toBe('fresh')
  })

  it('asks nobody without a contact, and everybody where live weather is asked for beside other settings', async () => {
    const { weather } = await live({ SEAMHAND_CONTACT: '' })
    expect(await weather.refresh(alabama, now)).toBe('down')
    await database?.close()
    const beside = await live({ SEAMHAND_WEATHER: 'none' })
    metAway()
    nws()
    expect(await beside.weather.refresh(alabama, now)).toBe('fresh')
  })

  it('tells the operator nothing of the key', async () => {
    const { weather, told } = await live({ SEAMHAND_WEATHER: 'open-meteo', OPEN_METEO_KEY: key })
    nock(urls.OPEN_METEO_URL).get('/forecast').query(true).reply(403, `{"error":true,"reason":"key ${key} is not known"}`)
    await weather.refresh(berlin, now)
    nock(urls.OPEN_METEO_URL).get('/forecast').query(true).replyWithError(`no way to ?apikey=${key}`)
    await weather.refresh(berlin, now + 7200)
    expect(told).toHaveLength(2)
    expect(JSON.stringify(told)).not.toContain(key)
  })
})

describe('weather at the terminal', () => {
  it('spares a source that is down for all questions of a stream', async () => {
    const config = readConfig({ SEAMHAND_CONTACT: 'ops@crew.example', ...urls, SEAMHAND_WEATHER: 'met', LOG_LEVEL: 'silent' })
    const tools = wire(config, { out: () => undefined, err: () => undefined, lines: async function* () {}, now: () => now }, false)
    const store = await tools.openStore(`${folder()}/stream`)
    // One mock: a second request would fail the test.
    metAway()
    for (const at of [now, now + 1]) expect(await (await tools.weather('live', at, store)).at(berlin, at)).toBeNull()
    await store.close()
  })
})

it('readiness hangs on forecasts: alerts that are away take nothing from it', async () => {
  const config = readConfig({
    SEAMHAND_DATA: `${folder()}/ready`,
    SEAMHAND_CONTACT: 'ops@crew.example',
    SEAMHAND_WEATHER: 'nws',
    LOG_LEVEL: 'silent',
    ...urls
  })
  const terminal = { out: () => undefined, err: () => undefined, lines: async function* () {}, now: () => now }
  const { live, readiness, store } = await prepare(config, wire(config, terminal, true))
  nock(urls.NWS_URL).get('/points/33.52,-86.81').twice().reply(500, '')
  await live.refreshAlerts([alabama], now, () => false)
  expect(readiness.health.weather()).toBe(true)
  await live.refreshAll([alabama], now, () => false)
  expect(readiness.health.weather()).toBe(false)
  await store.close()
})
