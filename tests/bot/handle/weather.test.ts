import { describe, expect, it } from 'vitest'
import { fixture } from '../../support/fixture.js'
import { findingOf, findingsOf, fullSpray, numbersOf, type Seamhand, seamhands, type WeatherChoice } from '../../support/seamhand.js'

const open = seamhands()

interface Met {
  readonly properties: {
    readonly timeseries: readonly { readonly time: string; readonly data: { readonly instant: { readonly details: Record<string, number> } } }[]
  }
}

describe('a forecast file of a service', () => {
  const met: WeatherChoice = { file: 'metno_complete.json', issuedAt: '2020-07-20T01:30:57Z' }

  it('of MET Norway: its own values at its hours, m/s as km/h, a straight line between', async () => {
    const hours = (JSON.parse(fixture('weather/metno_complete.json')) as Met).properties.timeseries
    const seamhand = await open({ weather: met })
    const details = (index: number) => hours[index]?.data.instant.details as Record<string, number>
    const at = async (time: string) => numbersOf(await seamhand.ask('air', { at: time, log: false }))

    // Issued at 01:30:57: at 12:00 it is 10.5 h old, stale and still used.
    const noon = await at('2020-07-20T12:00:00Z')
    expect(noon).toMatchObject({ airC: details(1).air_temperature, rhPct: details(1).relative_humidity, dewPointC: details(1).dew_point_temperature })
    expect(noon.windKmh).toBeCloseTo((details(1).wind_speed as number) * 3.6, 6)
    const half = await at('2020-07-20T12:30:00Z')
    expect(half.airC).toBeCloseTo(((details(1).air_temperature as number) + (details(2).air_temperature as number)) / 2, 6)
  })

  it('more than 3 h old is stale and said so, more than 12 h old is nothing', async () => {
    const seamhand = await open({ weather: met })
    const stale = await seamhand.ask('air', { at: '2020-07-20T13:00:00Z', log: false })
    const dead = await seamhand.ask('air', { at: '2020-07-20T13:30:58Z', log: false })

    expect(stale.weather).toEqual({ source: 'met', issuedAt: '2020-07-20T01:30:57Z', stale: true, sample: false })
    expect(numbersOf(stale).airC).not.toBeNull()
    expect(findingOf(stale, 'wind-mean', 'lay')).toMatchObject({ origin: 'forecast', stale: true })
    expect(numbersOf(dead)).toMatchObject({ airC: null, windKmh: null, gustKmh: null })
    expect(dead.weather?.stale).toBe(true)
  })

  it('of Open-Meteo: local hours of its own zone, null where it has null', async () => {
    const file = 'open-meteo_forecast.json'
    const told = (JSON.parse(fixture(`weather/${file}`)) as { hourly: Record<string, (number | string | null)[]> }).hourly
    const index = told.time?.indexOf('2026-05-04T08:00') ?? -1
    const seamhand = await open({ weather: { file, issuedAt: '2026-05-04T06:00:00Z' } })
    const numbers = numbersOf(await seamhand.ask('spray', { at: '2026-05-04T06:00:00Z', log: false }))

    expect(index).toBeGreaterThan(0)
    expect(numbers).toMatchObject({
      airC: told.temperature_2m?.[index],
      rhPct: told.relative_humidity_2m?.[index],
      windKmh: told.wind_speed_10m?.[index]
    })
  })

  it('of the US NWS: values of the interval that holds the hour', async () => {
    const seamhand = await open({ weather: { file: 'nws_gridpoints.json', issuedAt: '2024-02-20T15:15:12Z' } })
    const reply = await seamhand.ask('air', { at: '2024-02-20T16:00:00Z', log: false })

    expect(reply.weather).toEqual({ source: 'nws', issuedAt: '2024-02-20T15:15:12Z', stale: false, sample: false })
    // 2024-02-20T15:00/PT3H: 12.777777777777779 °C in the file.
    expect(numbersOf(reply).airC).toBe(12.777778)
  })

  it('is beaten by a reading, and says what it would have said when the reading is too old', async () => {
    const seamhand = await open({ weather: met })
    await seamhand.ask('air 25', { at: '2020-07-20T12:00:00Z' })

    expect(numbersOf(await seamhand.ask('air', { at: '2020-07-20T13:00:00Z', log: false })).airC).toBe(25)
    expect(numbersOf(await seamhand.ask('air', { at: '2020-07-20T13:00:01Z', log: false })).airC).not.toBe(25)
  })
})

/** Asks at every hour of a week from Monday 2026-05-04 00:00 in Berlin on. */
async function everyHour<T>(
  text: string,
  seamhand: Seamhand,
  read: (reply: Awaited<ReturnType<Seamhand['ask']>>) => T,
  from = '2026-05-03T22:00:00Z'
): Promise<readonly T[]> {
  const found: T[] = []
  for (let hour = 0; hour < 168; hour += 1) {
    const at = new Date(Date.parse(from) + hour * 3_600_000).toISOString()
    found.push(read(await seamhand.ask(text, { at, log: false })))
  }
  return found
}

describe('the invented week', () => {
  it('is answered at every hour, marked as invented, with nothing failing', async () => {
    const seamhand = await open({ weather: 'sample' })
    const replies = await everyHour('spray', seamhand, (reply) => reply)

    expect(seamhand.bugs).toEqual([])
    expect(replies.every(({ ok, weather }) => ok && weather?.sample === true && weather.source === 'sample' && !weather.stale)).toBe(true)
    // What is an estimate is never certain: it has a spread, and is shown as a forecast.
    for (const reply of replies) {
      const air = findingOf(reply, 'air-temperature')
      expect(air.origin).toBe('forecast')
      expect(air.spread).toBeGreaterThan(0)
    }
  })

  it('shows rain, thunder, wind and cold as well as good hours', async () => {
    const seamhand = await open({ weather: 'sample' })
    const seen = new Set((await everyHour('spray', seamhand, findingsOf)).flat().map(({ rule, outcome }) => `${rule} ${outcome}`))

    for (const each of [
      'rain-now no-go',
      'rain-now go',
      'thunder no-go',
      'thunder go',
      'daylight no-go',
      'daylight go',
      'rain-coming no-go',
      'rain-coming go'
    ]) {
      expect(seen, each).toContain(each)
    }
    expect([...seen].some((each) => each.startsWith('wind-') && !each.endsWith(' go'))).toBe(true)
  })

  it('comes again the week after', async () => {
    const seamhand = await open({ weather: 'sample' })
    const read = (reply: Parameters<typeof numbersOf>[0]) => {
      const { airC, rhPct, windKmh, gustKmh, rainChancePct } = numbersOf(reply)
      return { airC, rhPct, windKmh, gustKmh, rainChancePct }
    }

    expect(await everyHour('air', seamhand, read, '2026-05-10T22:00:00Z')).toEqual(await everyHour('air', seamhand, read))
  })

  it('an estimate across a no-go bound is unknown: take a reading; a reading decides it', async () => {
    const seamhand = await open({ weather: 'sample' })
    const gusts = await everyHour('spray', seamhand, (reply) => ({ reply, gust: findingOf(reply, 'wind-gust', 'spray') }))
    const doubtful = gusts.find(({ gust }) => gust.outcome === 'unknown')

    if (doubtful === undefined) expect.fail('no hour of the week is in doubt')
    const { value, spread, limit } = doubtful.gust as { value: number; spread: number; limit: number }
    // outside contract §2: v − 1.645 s and v + 1.645 s stand on both sides of the bound.
    expect(value - 1.645 * spread).toBeLessThanOrEqual(limit)
    expect(value + 1.645 * spread).toBeGreaterThan(limit)
    const read = await seamhand.ask('spray gust 20 wind 10', { at: doubtful.reply.at, log: false })
    expect(findingOf(read, 'wind-gust', 'spray')).toMatchObject({ outcome: 'go', origin: 'reading', spread: 0 })
  })
})

describe('no forecast', () => {
  it('leaves what nobody said unknown, and says what to read', async () => {
    const reply = await (await open()).ask('spray')
    const fixes = findingsOf(reply).map(({ rule, outcome, fix }) => `${rule} ${outcome} ${fix}`)

    expect(reply.weather).toBeNull()
    expect(fixes).toEqual(
      expect.arrayContaining(['air-temperature unknown read:air', 'wind-gust unknown read:gust', 'thunder unknown state:thunder'])
    )
    expect(findingOf(reply, 'daylight').outcome).toBe('go')
  })

  it('what was said too long ago is stale, and is told apart from what was never said', async () => {
    const seamhand = await open()
    await seamhand.ask(fullSpray)
    const reply = await seamhand.ask('spray', { at: '11:30', log: false })

    expect(findingOf(reply, 'air-temperature')).toMatchObject({ outcome: 'unknown', value: null, stale: true, fix: 'read:air' })
    expect(findingOf(reply, 'substrate-dry')).toMatchObject({ outcome: 'unknown', stale: true })
    expect(findingOf(reply, 'substrate-clean')).toMatchObject({ outcome: 'go' })
    expect(findingOf(reply, 'kit-mixed')).toMatchObject({ outcome: 'caution' })
    expect(findingOf(reply, 'compatibility')).toMatchObject({ outcome: 'go' })
    expect(findingOf(await (await open()).ask('spray'), 'air-temperature').stale).toBe(false)
  })
})
