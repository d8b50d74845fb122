import { describe, expect, it } from 'vitest'
import type { Facts } from '../../../src/core/facts.js'
import { sunEvents } from '../../../src/core/gather/daylight.js'
import { gather } from '../../../src/core/gather/gather.js'
import { localDate } from '../../../src/core/instant.js'
import { makeForecast } from '../../../src/core/weather/forecast.js'
import { emptyHour } from '../../../src/core/weather/hour.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'
import { type Logged, remembered } from '../../support/remembered.js'

/** 12:00 in Berlin, six hours after sunrise. */
const noon = iso('2026-05-04T10:00:00Z')
const min = 60

function factsAt(log: readonly Logged[], now: number, forecast: Parameters<typeof gather>[1] = null): Facts {
  const memory = remembered(log, now)
  return gather(memory, forecast, sunEvents(memory.settings, localDate(now, memory.settings.zone)), sheet(), now)
}

function reading(data: Logged[3], at = noon): Logged {
  return [at, 'reading', 'day', data]
}

function statement(data: Logged[3], at = noon): Logged {
  return [at, 'statement', 'day', data]
}

/** Ages of outside contract §7: at the bound in force, a second past it stale. */
const ages: readonly (readonly [
  what: string,
  minutes: number,
  log: Logged,
  read: (facts: Facts) => { value: unknown; stale: boolean; origin: unknown }
])[] = [
  ['air', 60, reading({ airC: 20 }), (facts) => facts.airC],
  ['humidity', 60, reading({ rhPct: 50 }), (facts) => facts.rhPct],
  ['dew point', 60, reading({ dewPointC: 9 }), (facts) => facts.dewPointC],
  ['wind', 60, reading({ windKmh: 10 }), (facts) => facts.windKmh],
  ['gust', 60, reading({ gustKmh: 15 }), (facts) => facts.gustKmh],
  ['substrate', 30, reading({ substrateC: 18 }), (facts) => facts.substrateC],
  ['sheet', 30, reading({ sheetC: 18 }), (facts) => facts.sheetC],
  ['rain now', 60, statement({ rainFalling: false }), (facts) => facts.rainFalling],
  ['rain chance', 60, statement({ rainChancePct: 10 }), (facts) => facts.rainChancePct],
  ['no thunder', 60, statement({ thunder: false }), (facts) => facts.noThunder],
  ['substrate dry', 60, statement({ substrateDry: true }), (facts) => facts.substrateDry],
  ['fleece dry', 60, statement({ fleeceDry: true }), (facts) => facts.fleeceDry],
  ['seam dry', 60, statement({ lapDry: true }), (facts) => facts.seamDry],
  ['substrate clean', 240, statement({ substrateClean: true }), (facts) => facts.substrateClean],
  ['lap clean', 60, statement({ lapClean: true }), (facts) => facts.lapClean],
  ['kit', 60, [noon, 'kit', 'kit:K1', { isoC: 25, resinC: 25, mixed: true }], (facts) => facts.kit.isoC]
]

describe('a reading or statement', () => {
  it.each(ages)('of %s holds for %i min and is stale a second later', (_what, minutes, log, read) => {
    const last = read(factsAt([log], noon + minutes * min))
    expect(last).toMatchObject({ stale: false })
    expect(last.value).not.toBeNull()

    expect(read(factsAt([log], noon + minutes * min + 1))).toMatchObject({ value: null, stale: true })
  })

  it.each(ages)('of %s does not hold before its instant', (_what, _minutes, log, read) => {
    expect(read(factsAt([log], noon - 1)).value).toBeNull()
    expect(read(factsAt([log], noon)).value).not.toBeNull()
  })

  it('of the substrate holds 15 min within an hour of sunrise', () => {
    const day = '2026-05-04'
    const { sunriseAt } = sunEvents({ lat: 50, lon: 8, zone: 'Europe/Berlin' }, day)
    expect(sunriseAt).not.toBeNull()
    const rise = sunriseAt as number
    const valueAt = (readAt: number, now: number) => factsAt([reading({ substrateC: 18 }, readAt)], now).substrateC.value

    expect(valueAt(rise, rise + 15 * min)).toBe(18)
    expect(valueAt(rise, rise + 15 * min + 1)).toBeNull()
    expect(valueAt(rise - 90 * min, rise - 61 * min)).toBe(18)
    expect(valueAt(rise - 90 * min, rise - 60 * min)).toBeNull()
    expect(valueAt(rise + 45 * min, rise + 60 * min)).toBe(18)
    expect(valueAt(rise + 40 * min, rise + 60 * min)).toBeNull()
    expect(valueAt(rise + 40 * min, rise + 60 * min + 1)).toBe(18)
  })

  it('of yesterday evening still counts after midnight, while within its age', () => {
    const late = iso('2026-05-04T21:50:00Z')
    const log = [reading({ airC: 12 }, late), statement({ substrateClean: true }, late)]

    expect(factsAt(log, late + 20 * min)).toMatchObject({ today: '2026-05-05', airC: { value: 12 }, substrateClean: { value: true } })
    expect(factsAt(log, late + 61 * min).airC).toMatchObject({ value: null, stale: true })
  })

  it('is the latest by its instant, then by arrival', () => {
    expect(factsAt([reading({ airC: 20 }, noon), reading({ airC: 10 }, noon - 60)], noon).airC.value).toBe(20)
    expect(factsAt([reading({ airC: 20 }, noon), reading({ airC: 10 }, noon)], noon).airC.value).toBe(10)
  })
})

describe('what is said today', () => {
  const today: readonly (readonly [what: string, data: Logged[3], read: (facts: Facts) => unknown])[] = [
    ['intakes', { intakes: 'none' }, (facts) => facts.intakes.value],
    ['the sheet', { sheet: 'relaxed' }, (facts) => facts.sheetState.value],
    ['hoses tight', { tight: true }, (facts) => facts.startUp.tight.value],
    ['purged', { purged: true }, (facts) => facts.startUp.purged.value],
    ['nozzle', { nozzle: true }, (facts) => facts.startUp.nozzle.value],
    ['tested', { tested: true }, (facts) => facts.startUp.tested.value],
    ['the lead', { lead: { leadM: 50, areaMm2: 2.5 } }, (facts) => facts.dropPct.value]
  ]

  it.each(today)('%s holds until local midnight', (_what, data, read) => {
    const log = [statement(data, iso('2026-05-04T04:00:00Z'))]

    expect(read(factsAt(log, iso('2026-05-04T21:59:59Z')))).not.toBeNull()
    expect(read(factsAt(log, iso('2026-05-04T22:00:00Z')))).toBeNull()
  })

  it('a mixed kit holds until local midnight', () => {
    const log: Logged[] = [[iso('2026-05-04T04:00:00Z'), 'kit', 'kit:K1', { mixed: true }]]

    expect(factsAt(log, iso('2026-05-04T21:59:59Z')).kit.mixed.value).toBe(true)
    expect(factsAt(log, iso('2026-05-04T22:00:00Z')).kit.mixed.value).toBeNull()
  })

  it('an expiry date, a compatibility and a moisture test hold from day to day', () => {
    const at = iso('2026-04-20T08:00:00Z')
    const log: Logged[] = [
      [at, 'kit', 'kit:K1', { expiresOn: '2026-05-10' }],
      statement({ compatibility: 'ask' }, at),
      statement({ deckMoisturePassed: true }, at)
    ]
    const facts = factsAt(log, noon)

    expect(facts.kit).toMatchObject({ expiresOn: { value: '2026-05-10' }, daysLeft: 6 })
    expect(facts.compatibility).toMatchObject({ value: 'ask', at })
    expect(facts.deckMoisture.value).toBe(true)
  })
})

describe('dryness', () => {
  it('is lost to rain stated since, at the same instant too, and won back by a later "dry"', () => {
    const dry = statement({ substrateDry: true, fleeceDry: true, lapDry: true }, noon)
    const rain = (at: number) => statement({ rainFalling: true }, at)

    expect(factsAt([dry], noon).substrateDry.value).toBe('dry')
    expect(factsAt([rain(noon - 1), dry], noon).substrateDry.value).toBe('dry')
    expect(factsAt([dry, rain(noon)], noon)).toMatchObject({
      substrateDry: { value: 'rain' },
      fleeceDry: { value: 'rain' },
      seamDry: { value: 'rain' }
    })
    expect(factsAt([dry, rain(noon + 60), statement({ substrateDry: true }, noon + 120)], noon + 120)).toMatchObject({
      substrateDry: { value: 'dry' },
      fleeceDry: { value: 'rain' }
    })
  })

  it('is lost to dew that readings since put on the surface', () => {
    const log = [statement({ substrateDry: true }, noon), reading({ airC: 10, dewPointC: 9, substrateC: 8 }, noon + 60)]

    expect(factsAt(log, noon + 60).substrateDry.value).toBe('dew')
    expect(factsAt(log, noon + 60).surfaceWet.value).toBe(true)
    expect(factsAt([...log, statement({ substrateDry: true }, noon + 60)], noon + 60).substrateDry.value).toBe('dry')
  })

  it('rain of yesterday evening still wets what was called dry before it', () => {
    const late = iso('2026-05-04T21:50:00Z')
    const log = [statement({ substrateDry: true }, late), statement({ rainFalling: true }, late + 5 * min)]

    expect(factsAt(log, late + 15 * min).substrateDry.value).toBe('rain')
  })
})

describe('the start-up', () => {
  const done = { tight: true, purged: true, nozzle: true, tested: true }
  const values = ({ startUp }: Facts) => [startUp.tight.value, startUp.purged.value, startUp.nozzle.value, startUp.tested.value]

  it('begins anew with "start": what was stated of an earlier one counts no more', () => {
    expect(values(factsAt([statement(done)], noon))).toEqual([true, true, true, true])
    expect(values(factsAt([statement(done), statement({ start: true }, noon + 1)], noon + 1))).toEqual([null, null, null, null])
    expect(values(factsAt([statement(done), statement({ start: true, tight: true }, noon + 1)], noon + 1))).toEqual([true, null, null, null])
    expect(values(factsAt([statement(done), statement({ start: true }, noon - 1)], noon))).toEqual([true, true, true, true])
  })

  it('a test spray states its last step, good or not', () => {
    const foam = (verdict: string): Logged => [noon, 'kit', 'kit:K1', { foam: { signs: [], verdict } }]

    expect(factsAt([foam('good')], noon).startUp.tested.value).toBe(true)
    expect(factsAt([statement(done, noon - 1), foam('stop')], noon).startUp.tested.value).toBe(false)
  })
})

describe('a kit', () => {
  const kit = (data: Logged[3], at = noon, name = 'K1'): Logged => [at, 'kit', `kit:${name}`, data]

  it.each([
    ['never mixed', [kit({ isoC: 25, resinC: 25 })], null, true],
    ['mixed with the reading', [kit({ isoC: 25, resinC: 25, mixed: true })], 25, false],
    ['mixed 30 min before', [kit({ mixed: true }, noon - 30 * min), kit({ isoC: 25, resinC: 25 })], 25, false],
    ['mixed 30 min and a second before', [kit({ mixed: true }, noon - 30 * min - 1), kit({ isoC: 25, resinC: 25 })], null, true],
    ['mixed after the reading only', [kit({ isoC: 25, resinC: 25 }, noon - 60), kit({ mixed: true })], null, true],
    ['mixed, then stated not mixed', [kit({ mixed: true }, noon - 120), kit({ mixed: false }, noon - 60), kit({ isoC: 25, resinC: 25 })], null, true]
  ] as const)('%s', (_how, log, isoC, unmixed) => {
    const { kit: fact } = factsAt(log, noon)

    expect(fact.isoC.value).toBe(isoC)
    expect(fact.resinC.value).toBe(isoC)
    expect(fact.unmixed).toBe(unmixed)
  })

  it('is the one last named, and its own readings count', () => {
    const log = [kit({ isoC: 25, resinC: 25, mixed: true }), kit({ isoC: 18, resinC: 18, mixed: true }, noon + 60, 'K7')]

    expect(factsAt(log, noon)).toMatchObject({ kit: { name: 'K1', isoC: { value: 25 } } })
    expect(factsAt(log, noon + 60)).toMatchObject({ kit: { name: 'K7', isoC: { value: 18 } } })
    expect(factsAt([...log, kit({}, noon + 120)], noon + 120)).toMatchObject({ kit: { name: 'K1', isoC: { value: 25 } } })
  })

  it('keeps one part when only the other is read again', () => {
    const log = [kit({ isoC: 25, resinC: 24, mixed: true }), kit({ isoC: 27 }, noon + 60)]

    expect(factsAt(log, noon + 60).kit).toMatchObject({ isoC: { value: 27 }, resinC: { value: 24 } })
  })
})

describe('power', () => {
  const lead = statement({ lead: { leadM: 50, areaMm2: 2.5, volts: 230, watts: 3450 } })

  it('a voltage measured at the tool after the lead was stated is worth more than its sum', () => {
    expect(factsAt([lead], noon).powerMeasured).toBe(false)
    expect(factsAt([lead, statement({ toolV: 223.1 }, noon + 1)], noon + 1)).toMatchObject({
      powerMeasured: true,
      dropPct: { value: 3, origin: 'reading' }
    })
    expect(factsAt([statement({ toolV: 223.1 }, noon - 1), lead], noon).powerMeasured).toBe(false)
  })
})

/** Hours from noon on, all alike but for what is given. */
function forecastOf(hour: Partial<ReturnType<typeof emptyHour>>, issuedAt: number) {
  const hours = Array.from({ length: 24 }, (_, index) => ({ ...emptyHour(noon + (index - 6) * 3600), ...hour }))
  return makeForecast({ source: 'met', issuedAt, sample: false, hours })
}

describe('a forecast', () => {
  const calm = { airC: 15, rhPct: 60, windKmh: 8, rainMm: 0, rainChancePct: 5 }

  it('is beaten by a reading in force, and takes over when that is too old', () => {
    const forecast = forecastOf(calm, noon)
    const log = [reading({ airC: 20, windKmh: 12 })]

    expect(factsAt(log, noon + 60 * min, forecast)).toMatchObject({
      airC: { value: 20, origin: 'reading' },
      windKmh: { value: 12, origin: 'reading', spread: 0 }
    })
    // An hour later the forecast decides, moved by 5 K and 4 km/h that fade with 6 h;
    const { airC, windKmh } = factsAt(log, noon + 60 * min + 1, forecast)
    expect(airC).toMatchObject({ origin: 'forecast', stale: false })
    expect(airC.value).toBeCloseTo(15 + 5 * Math.exp(-1 / 6), 3)
    expect(windKmh).toMatchObject({ origin: 'forecast' })
    expect(windKmh.value).toBeCloseTo(8 + 4 * Math.exp(-1 / 6), 3)
  })

  it('more than 3 h old is stale with doubled spreads, more than 12 h old is nothing: outside contract §2', () => {
    const at = (hours: number, past: number) => factsAt([], noon, forecastOf(calm, noon - hours * 3600 - past)).airC
    // × √(1 + lead h / 24) with the lead from when it was issued: outside contract §7.
    const spread = (hours: number) => 1.5 * Math.sqrt(1 + hours / 24)

    expect(at(0, 0)).toMatchObject({ value: 15, stale: false, spread: 1.5 })
    expect(at(3, 0)).toMatchObject({ value: 15, stale: false })
    expect(at(3, 0).spread).toBeCloseTo(spread(3), 6)
    expect(at(3, 1)).toMatchObject({ value: 15, stale: true })
    expect(at(3, 1).spread).toBeCloseTo(2 * spread(3 + 1 / 3600), 6)
    expect(at(12, 0)).toMatchObject({ value: 15, stale: true })
    expect(at(12, 1)).toMatchObject({ value: null })
  })

  it('of the gust that a source lacks is 1.6 times the mean wind (from memory), with the spread of an estimate', () => {
    expect(factsAt([], noon, forecastOf(calm, noon)).gustKmh).toMatchObject({ value: 12.8, origin: 'forecast', spread: 12 })
  })

  it('says nothing of what it lacks', () => {
    expect(factsAt([], noon, forecastOf({ airC: 15 }, noon))).toMatchObject({
      rhPct: { value: null },
      windKmh: { value: null },
      gustKmh: { value: null },
      rainFalling: { value: null },
      rainChancePct: { value: null },
      thunderThisHour: null
    })
  })
})

describe('humidity and dew point', () => {
  it('follow from each other and the air; the later one said leads', () => {
    // Magnus form over water at 20 °C and 50 %: 9.3 °C (reference rows of tests/truth/psychrometrics.json).
    expect(factsAt([reading({ airC: 20, rhPct: 50 })], noon).dewPointC.value).toBeCloseTo(9.27, 1)
    expect(factsAt([reading({ airC: 20, dewPointC: 9.27 })], noon).rhPct.value).toBeCloseTo(50, 1)
    const log = [reading({ airC: 20, rhPct: 50 }), reading({ dewPointC: 15 }, noon + 60)]
    expect(factsAt(log, noon + 60).dewPointC).toMatchObject({ value: 15, origin: 'reading' })
  })

  it('the margin is to the frost point where the dew point is below 0 °C', () => {
    const facts = factsAt([reading({ airC: 2, dewPointC: -5, substrateC: 0 })], noon)

    // Frost point over ice of a dew point of −5 °C over water: −4.4 °C (tests/truth/psychrometrics.json holds both saturation lines).
    expect(facts.substrateDewMarginK.value).toBeCloseTo(4.4, 1)
  })
})
