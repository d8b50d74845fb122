import { describe, expect, it } from 'vitest'
import { leftIn, secondsUntil } from '../../../src/core/kits/cylinder.js'
import { type KitQuestion, kitTimes, startingReading } from '../../../src/core/kits/schedule.js'
import { commonPractice } from '../../../src/core/limits/common-practice.js'
import { resolveSheet } from '../../../src/core/limits/resolve.js'
import { emptyHour } from '../../../src/core/weather/hour.js'

const { kit } = resolveSheet(commonPractice)
const now = 1_777_875_000
const hourS = 3600
/** ρ·V·c/(h·A) of the sheet's cylinder: 4.082 h, as in row the-012 of the published values. */
const tauS = (kit.rhoKgM3 * kit.cJKgK * 0.05625) / kit.hWM2K

function ask(change: Partial<KitQuestion>) {
  return kitTimes({
    kit,
    reading: { at: now, c: 5 },
    place: 'box',
    placeC: 30,
    hours: [],
    boxC: null,
    limits: { minC: 21, maxC: 32 },
    from: now,
    readyBy: null,
    ...change
  })
}

/** Hours of constant weather from yesterday on. */
function weather(airC: number, windKmh = 0, sunWm2 = 0) {
  return Array.from({ length: 130 }, (_, index) => ({ ...emptyHour(now + (index - 24) * hourS), airC, windKmh, sunWm2 }))
}

describe('a kit in the box', () => {
  it('is ready by the slow bound: conduction alone, by the series', () => {
    const readyAt = now + secondsUntil((30 - 21) / 25, 'mean', leftIn(kit))
    expect(Math.abs((ask({}).readyAt ?? 0) - readyAt)).toBeLessThan(6 * 60)
  })

  it('is uniform at its reading, and then warm outside first', () => {
    expect(ask({})).toMatchObject({ shellC: 5, meanC: 5, coreC: 5 })
    const later = ask({ from: now + 3 * hourS })
    expect(later.shellC!).toBeGreaterThan(later.meanC!)
    expect(later.meanC!).toBeGreaterThan(later.coreC!)
    expect(later.readyAt).toBe(ask({}).readyAt)
  })

  it('may get too hot in a hot one, by the fast bound', () => {
    expect(ask({}).hotAt).toBeNull()
    expect(ask({ placeC: 40 }).hotAt).toBeCloseTo(now + tauS * Math.log(35 / 8), -3)
  })

  it('is never ready in a cold one, and ready now when it is', () => {
    expect(ask({ placeC: 20 })).toMatchObject({ readyAt: null, coldAt: null, hotAt: null })
    expect(ask({ reading: { at: now, c: 25 } }).readyAt).toBe(now)
    expect(ask({ reading: { at: now, c: 33 }, placeC: 35 }).readyAt).toBeNull()
  })

  it('has no times beyond 72 h', () => {
    const slow = { ...kit, radiusM: 0.5, heightM: 1.5 }
    expect(ask({ kit: slow }).readyAt).toBeNull()
    expect(ask({ limits: { minC: null, maxC: null } })).toMatchObject({ readyAt: now, coldAt: null, hotAt: null })
  })

  it('warms later in a carton, and no sooner with a smaller mixing factor', () => {
    expect(ask({ cartonM2KW: 0.07 }).readyAt!).toBeGreaterThan(ask({}).readyAt!)
    expect(ask({ kit: { ...kit, mixing: 1 }, from: now + 6 * hourS }).meanC!).toBeLessThan(ask({ from: now + 6 * hourS }).meanC!)
  })

  it('taken to the deck, is too cold by the fast bound from when it is ready and wanted', () => {
    const warm = { reading: { at: now, c: 25 }, placeC: 25 }
    expect(ask({ ...warm, hours: weather(5) }).coldAt).toBeCloseTo(now + tauS * Math.log(20 / 16), -2)
    const wanted = ask({ ...warm, hours: weather(5), readyBy: now + 10 * hourS })
    expect(wanted.coldAt).toBeCloseTo(now + 10 * hourS + tauS * Math.log(20 / 16), -2)
    expect(ask({ ...warm, hours: [] }).coldAt).toBeNull()
  })
})

describe('a kit on the deck', () => {
  const warm = { reading: { at: now, c: 25 }, place: 'deck' as const }

  it('is too cold by the fast bound, e^(−t/τ) in still air', () => {
    expect(ask({ ...warm, placeC: 5 }).coldAt).toBeCloseTo(now + tauS * Math.log(20 / 16), -2)
    expect(ask({ ...warm, placeC: 22 }).coldAt).toBeNull()
    expect(ask({ ...warm, reading: { at: now, c: 20 }, placeC: 5 }).coldAt).toBe(now)
  })

  it('sooner in the wind, later in the sun, and not known without a forecast', () => {
    const still = ask({ ...warm, placeC: null, hours: weather(5) }).coldAt!
    expect(ask({ ...warm, placeC: null, hours: weather(5, 30) }).coldAt!).toBeLessThan(still)
    expect(ask({ ...warm, placeC: null, hours: weather(5, 0, 300) }).coldAt!).toBeGreaterThan(still)
    expect(ask({ ...warm, placeC: null })).toEqual({
      shellC: 25,
      meanC: 25,
      coreC: 25,
      readyAt: now,
      likelyAt: now,
      coldAt: null,
      hotAt: null,
      startBy: null
    })
  })
})

describe('in the box by', () => {
  const store = { place: 'store' as const, placeC: 5, boxC: 30 }
  const warmS = ask({}).readyAt! - now

  it('the time it needs before it is wanted', () => {
    const readyBy = now + 48 * hourS
    const { startBy } = ask({ ...store, readyBy })
    expect(startBy).not.toBeNull()
    expect(Math.abs(readyBy - warmS - startBy!)).toBeLessThanOrEqual(600)
    // Put in then, it is ready in time; half an hour later it is not.
    const put = (at: number) => kitTimes({ ...put0, reading: { at, c: 5 }, from: at }).readyAt!
    expect(put(startBy!)).toBeLessThanOrEqual(readyBy)
    expect(put(startBy! + 1800)).toBeGreaterThan(readyBy)
  })

  it('never, when it is too late, too cold a box, or not known', () => {
    expect(ask({ ...store, readyBy: now + warmS - 1200 }).startBy).toBeNull()
    expect(ask({ ...store, boxC: 20, readyBy: now + 60 * hourS }).startBy).toBeNull()
    expect(ask({ ...store, boxC: null, readyBy: now + 60 * hourS }).startBy).toBeNull()
    expect(ask({ ...store, readyBy: null }).startBy).toBeNull()
    expect(ask({ ...store, readyBy: now - 1 }).startBy).toBeNull()
    expect(ask({ boxC: 30, readyBy: now + 60 * hourS }).startBy).toBeNull()
  })

  it('now, when what is around it until then is not known; any time, when it is warm where it is', () => {
    expect(ask({ ...store, placeC: null, readyBy: now + 60 * hourS }).startBy).toBe(now)
    expect(ask({ ...store, placeC: 24, reading: { at: now, c: 24 }, readyBy: now + 20 * hourS }).startBy).toBe(now + 20 * hourS)
  })

  const put0: KitQuestion = {
    kit,
    reading: { at: now, c: 5 },
    place: 'box',
    placeC: 30,
    hours: [],
    boxC: null,
    limits: { minC: 21, maxC: 32 },
    from: now,
    readyBy: null
  }
})

describe('readings', () => {
  const reading = (at: number, mixed: boolean) => ({ at, c: 20 + at, mixed })

  it('start from the last one of a mixed kit, else from the first', () => {
    expect(startingReading([])).toBeNull()
    expect(startingReading([reading(1, false), reading(2, false)])).toEqual(reading(1, false))
    expect(startingReading([reading(1, false), reading(2, true), reading(3, false)])).toEqual(reading(2, true))
  })

  it.each([{ reading: { at: now + 1, c: 20 } }, { reading: { at: now - 73 * hourS, c: 20 } }, { reading: { at: Number.NaN, c: 20 } }])(
    '%o says nothing',
    (change) => {
      expect(ask(change)).toEqual({ shellC: null, meanC: null, coreC: null, readyAt: null, likelyAt: null, coldAt: null, hotAt: null, startBy: null })
    }
  )

  it('says nothing of now when its place since then is not known', () => {
    expect(ask({ placeC: null, from: now + hourS })).toMatchObject({ shellC: null, meanC: null, readyAt: null })
  })

  it('NaN is refused', () => {
    expect(() => ask({ reading: { at: now, c: Number.NaN } })).toThrow(RangeError)
    expect(() => ask({ placeC: Number.NaN })).toThrow(RangeError)
  })
})
