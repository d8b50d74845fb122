import { describe, expect, it } from 'vitest'
import { missing } from '../../../src/core/fact.js'
import type { LapsedBy } from '../../../src/core/facts.js'
import type { CouponData } from '../../../src/core/log/data.js'
import { type DayState, emptyDay } from '../../../src/core/log/states/day.js'
import { emptyWelder } from '../../../src/core/log/states/welder.js'
import { emptyHour } from '../../../src/core/weather/hour.js'
import { type Around, clearance } from '../../../src/core/welds/clearance.js'
import { forecast, now, reading, said, sheet } from '../../support/facts.js'

// What lapses a clearance by itself: outside contract §2 (conditions changed since), §3 (half-days part at 12:00 site time).
const hour = 3600
const zone = 'Europe/Berlin'
/** `now` of the facts is 12:00 in Berlin: everything happens after it. */
const madeAt = now + hour
const common = sheet()

function lapsedBy(
  then: Partial<CouponData['conditions']>,
  around: Partial<Around['facts']>,
  rest: Partial<Omit<Around, 'facts'>> = {}
): LapsedBy | null {
  const value = {
    ...{ widthsMm: [41], widthMm: 41, peel: 'film', passed: true, cause: null, minWidthMm: 38 },
    conditions: { airC: null, sheetC: null, windKmh: null, cloudPct: null, ...then }
  } as CouponData
  const welder = { ...emptyWelder('robot'), status: 'cleared' as const, coupon: { value, at: madeAt, seq: 5 } }
  const facts = { airC: missing, sheetC: missing, windKmh: missing, cloudPct: missing, rainFalling: missing, ...around }
  const found = clearance(welder, { now: madeAt + 2 * hour, zone, facts, today: emptyDay, hours: [], ...rest }, common)
  expect(found.status).toBe(found.lapsedBy === null ? 'cleared' : 'lapsed')
  return found.lapsedBy
}

describe('conditions changed', () => {
  it.each([
    ['air as far as it may', { airC: 15.1 }, { airC: reading(21.1) }, null],
    ['air farther', { airC: 15.1 }, { airC: reading(21.2) }, 'air'],
    ['air colder, as a forecast has it', { airC: 15 }, { airC: forecast(8, 1.5) }, 'air'],
    ['sheet as far as it may', { sheetC: 20 }, { sheetC: reading(30) }, null],
    ['sheet farther', { sheetC: 20 }, { sheetC: reading(9.9) }, 'sheet'],
    ['wind as far as it may', { windKmh: 5 }, { windKmh: reading(15) }, null],
    ['wind farther', { windKmh: 20 }, { windKmh: reading(9.9) }, 'wind'],
    ['sun to cloud', { cloudPct: 30 }, { cloudPct: forecast(70) }, 'cloud'],
    ['cloud to sun', { cloudPct: 70 }, { cloudPct: forecast(30) }, 'cloud'],
    ['sun to half cloud', { cloudPct: 30 }, { cloudPct: forecast(69) }, null],
    ['half cloud to cloud', { cloudPct: 31 }, { cloudPct: forecast(100) }, null],
    ['nothing known then', {}, { airC: reading(30), cloudPct: forecast(90) }, null],
    ['nothing known now', { airC: 15, sheetC: 20, windKmh: 5, cloudPct: 10 }, {}, null]
  ] as const)('%s', (_what, then, facts, by) => {
    expect(lapsedBy(then, facts)).toBe(by)
  })

  it('by the limits of the sheet', () => {
    const strict = { ...common, changed: { ...common.changed, airK: 2 } }
    const welder = {
      ...emptyWelder('robot'),
      status: 'cleared' as const,
      coupon: { value: { conditions: { airC: 15, sheetC: null, windKmh: null, cloudPct: null } } as CouponData, at: madeAt, seq: 5 }
    }
    const facts = { airC: reading(17.5), sheetC: missing, windKmh: missing, cloudPct: missing, rainFalling: missing }
    const around = { now: madeAt, zone, facts, today: emptyDay, hours: [] }
    expect(clearance(welder, around, strict).lapsedBy).toBe('air')
    expect(clearance(welder, around, common).lapsedBy).toBeNull()
  })
})

describe('rain that fell and ended', () => {
  const rained = (afterH: number, rainMm: number | null) => [{ ...emptyHour(madeAt + afterH * hour), rainMm }]
  const saidAt = (at: number, value: boolean): Partial<DayState> => ({ latest: { rainFalling: { value, at, seq: 9 } } })

  it.each([
    ['an hour of the forecast since', rained(1, 0.2), 'rain'],
    ['less than what stops spraying', rained(1, 0.1), null],
    ['an hour that began before', rained(0.5, 3), null],
    ['an hour that is not over', rained(3, 3), null],
    ['an hour of which nothing is known', rained(1, null), null]
  ] as const)('%s', (_what, hours, by) => {
    expect(lapsedBy({}, {}, { hours })).toBe(by)
  })

  it('is not believed of a forecast against what somebody stated after it', () => {
    const today = { ...emptyDay, ...saidAt(madeAt + 1.5 * hour, false) }
    expect(lapsedBy({}, { rainFalling: said(false) }, { hours: rained(1, 2), today })).toBeNull()
    expect(lapsedBy({}, {}, { hours: rained(2, 2), today: { ...emptyDay, ...saidAt(madeAt + 0.5 * hour, false) } })).toBe('rain')
  })

  it('has not ended while it falls', () => {
    expect(lapsedBy({}, { rainFalling: said(true) }, { hours: rained(1, 2), today: { ...emptyDay, rainFellAt: madeAt + hour } })).toBeNull()
  })
})

describe('another lead', () => {
  const lead = { leadM: 30, areaMm2: 2.5, volts: 230 }
  const stated = (value: typeof lead, seq = 9) => ({ today: { ...emptyDay, latest: { lead: { value, at: madeAt, seq } } } })

  it.each([
    [lead, null],
    [{ ...lead, leadM: 31 }, 'lead'],
    [{ ...lead, areaMm2: 4 }, 'lead'],
    [{ ...lead, volts: 240 }, 'source']
  ])('%o: %s', (value, by) => {
    expect(lapsedBy({ lead }, {}, stated(value))).toBe(by)
    // Stated before the coupon was told, at the same instant: it is the lead of the coupon's day, no change.
    expect(lapsedBy({ lead }, {}, stated(value, 4))).toBeNull()
    expect(lapsedBy({}, {}, stated(value))).toBeNull()
  })
})
