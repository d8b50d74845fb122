import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { missing } from '../../../src/core/fact.js'
import { localDate, localTime, toIso } from '../../../src/core/instant.js'
import type { JsonObject } from '../../../src/core/log/entry.js'
import { addLast, type Folded, refold } from '../../../src/core/log/fold.js'
import { emptyDay } from '../../../src/core/log/states/day.js'
import { emptyWelder, type WelderState } from '../../../src/core/log/states/welder.js'
import { touches } from '../../../src/core/log/subjects.js'
import { clearance } from '../../../src/core/welds/clearance.js'
import { metresOf } from '../../../src/core/welds/holding.js'
import { reading, sheet } from '../../support/facts.js'

const zone = 'Europe/Berlin'
/** 2026-05-04T06:00 in Berlin: two days of work from here. */
const start = Date.UTC(2026, 4, 4, 4) / 1000
const common = sheet()

interface Happened {
  readonly minutes: number
  readonly type: 'coupon' | 'welder' | 'laid' | 'reading' | 'statement'
  readonly data: JsonObject
}

const conditions = fc.record({
  airC: fc.integer({ min: 5, max: 20 }),
  sheetC: fc.integer({ min: 5, max: 30 }),
  windKmh: fc.integer({ min: 0, max: 25 }),
  cloudPct: fc.constantFrom(null, 10, 50, 90)
})
const coupon = fc.record({
  passed: fc.constantFrom(true, true, true, false, null),
  widthMm: fc.integer({ min: 34, max: 45 }),
  minWidthMm: fc.constant(38),
  cause: fc.constant(null),
  conditions
})
const happened: fc.Arbitrary<Happened> = fc
  .tuple(
    fc.integer({ min: 0, max: 1800 }),
    fc.oneof(
      { weight: 4, arbitrary: coupon.map((data) => ['coupon', data] as const) },
      { weight: 1, arbitrary: coupon.map((data) => ['coupon', { ...data, cut: true }] as const) },
      {
        weight: 2,
        arbitrary: fc
          .constantFrom(
            'restart',
            'power',
            'source',
            'lead',
            'set',
            'speed',
            'nozzle',
            'roller',
            'operator',
            'off',
            'old-sheet',
            'probed',
            'released'
          )
          .map((event) => ['welder', { event }] as const)
      },
      { weight: 1, arbitrary: fc.constantFrom(1.5, 2).map((thicknessMm) => ['welder', { event: 'thickness', thicknessMm }] as const) },
      { weight: 3, arbitrary: fc.integer({ min: 1, max: 30 }).map((robotM) => ['laid', { areaM2: 1, robotM }] as const) },
      { weight: 2, arbitrary: fc.record({ airC: fc.integer({ min: 5, max: 25 }) }).map((data) => ['reading', data] as const) },
      { weight: 1, arbitrary: fc.record({ windKmh: fc.integer({ min: 0, max: 35 }) }).map((data) => ['reading', data] as const) },
      { weight: 1, arbitrary: fc.boolean().map((rainFalling) => ['statement', { rainFalling }] as const) }
    )
  )
  .map(([minutes, [type, data]]) => ({ minutes, type, data: data as unknown as JsonObject }))

function entriesOf(all: readonly Happened[]) {
  return all.map(({ minutes, type, data }, index) => {
    const at = start + minutes * 60
    const day = localDate(at, zone)
    const bare = { seq: index + 1, at: toIso(at), type, subject: type === 'coupon' || type === 'welder' ? 'welder:robot' : `day:${day}`, data }
    return { ...bare, atS: at, touches: touches(bare, day) }
  })
}

type Entries = ReturnType<typeof entriesOf>

function stateOf<T>(subject: string, entries: Entries, until: number, empty: T): T {
  return (refold(
    subject,
    entries.filter((entry) => entry.touches.includes(subject)),
    until
  )?.is ?? empty) as T
}

const facts = { airC: missing, sheetC: reading(12), windKmh: missing, cloudPct: missing, rainFalling: { ...missing, value: false as const } }

/** The same by going through everything that happened, one cause after another. */
function mayWeld(entries: Entries, now: number): boolean {
  const told = entries.filter(({ atS }) => atS <= now).sort((a, b) => a.atS - b.atS || a.seq - b.seq)
  const judged = told.findLastIndex(({ type, data }) => type === 'coupon' && data.passed !== null)
  const last = told[judged]
  if (last === undefined || last.data.passed !== true) return false
  if (localDate(last.atS, zone) !== localDate(now, zone)) return false
  if (localTime(last.atS, zone) < '12:00' && localTime(now, zone) >= '12:00') return false
  const then = last.data.conditions as { airC: number; sheetC: number; windKmh: number }
  if (Math.abs(then.sheetC - 12) > 10) return false
  let fell = false
  for (const { type, data } of told.slice(judged + 1)) {
    if (type === 'welder' && data.event !== 'probed' && data.event !== 'released') return false
    if (typeof data.airC === 'number' && Math.abs(data.airC - then.airC) > 6) return false
    if (typeof data.windKmh === 'number' && Math.abs(data.windKmh - then.windKmh) > 10) return false
    if (data.rainFalling === true) fell = true
  }
  return !fell
}

describe('a clearance, whatever happens', () => {
  it('is there just when a pass of the half-day stands and nothing happened since', () => {
    let cleared = 0
    fc.assert(
      fc.property(fc.array(happened, { maxLength: 14 }), fc.integer({ min: 0, max: 1800 }), (all, minutes) => {
        const entries = entriesOf(all.filter(({ data }) => data.cut !== true))
        const now = start + minutes * 60
        const welder = stateOf<WelderState>('welder:robot', entries, now, emptyWelder('robot'))
        const today = stateOf(`day:${localDate(now, zone)}`, entries, now, emptyDay)
        const { status } = clearance(welder, { now, zone, facts, today, hours: [] }, common)

        expect(status === 'cleared').toBe(mayWeld(entries, now))
        if (status === 'cleared') cleared += 1
      }),
      { numRuns: 800, seed: 5 }
    )
    expect(cleared).toBeGreaterThan(50)
  })

  it('never comes without a pass, and metres add up, told one by one or all at once', () => {
    fc.assert(
      fc.property(fc.array(happened, { maxLength: 20 }), (all) => {
        const entries = entriesOf(all).filter((entry) => entry.touches.includes('welder:robot'))
        let folded: Folded | null = null
        entries.forEach((entry, index) => {
          folded = addLast('welder:robot', folded, entry) ?? refold('welder:robot', entries.slice(0, index + 1))
        })
        const whole = refold('welder:robot', [...entries].reverse())
        expect(folded).toEqual(whole)
        const state = (whole?.is ?? emptyWelder('robot')) as unknown as WelderState
        const passes = entries.filter(({ type, data }) => type === 'coupon' && data.passed === true && data.cut !== true).length
        if (passes === 0) expect(state).toMatchObject({ clearedM: 0, sincePassM: 0 })
        if (passes === 0) expect(state.status).not.toBe('cleared')
        const { clearedM, onHoldM, releasedM } = metresOf(state)
        const welded = entries.reduce((sum, { type, data }) => sum + (type === 'laid' ? (data.robotM as number) : 0), 0)
        expect(clearedM + onHoldM + releasedM).toBe(welded)
        for (const metres of [clearedM, onHoldM, releasedM]) expect(metres).toBeGreaterThanOrEqual(0)
      }),
      { numRuns: 800, seed: 6 }
    )
  })
})
