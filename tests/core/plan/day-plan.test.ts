import { describe, expect, test } from 'vitest'
import { sunEvents } from '../../../src/core/gather/daylight.js'
import type { Memory } from '../../../src/core/gather/memory.js'
import { emptyDay } from '../../../src/core/log/states/day.js'
import type { Outcome } from '../../../src/core/outcome.js'
import { dayPlan, spellOf } from '../../../src/core/plan/day-plan.js'
import { deckOfDay } from '../../../src/core/plan/deck-day.js'
import { sprayFrom } from '../../../src/core/plan/deck-wait.js'
import type { ActivityOutlook, Outlook } from '../../../src/core/plan/outlook.js'
import type { Window } from '../../../src/core/plan/windows.js'
import type { RoofSeries } from '../../../src/core/roof/series.js'
import type { RuleId } from '../../../src/core/rules/index.js'
import { demoSite } from '../../../src/core/site.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'
import { emptyMemory } from '../../support/memory.js'

const date = '2026-05-04'
const zero = iso('2026-05-04T00:00:00Z')

/** A window between two hours of UTC. */
function hours(from: number, to: number, outcome: Outcome = 'go', closes: RuleId | null = null): Window {
  return { from: zero + from * 3600, to: zero + to * 3600, outcome, opens: null, closes }
}

function day(spray: readonly Window[], weld: readonly Window[] = []): Outlook {
  const of = (windows: readonly Window[]): ActivityOutlook => ({ outcome: 'go', bands: [], windows, binding: null, toRead: [] })
  return {
    date,
    known: true,
    from: zero,
    to: zero + 86_400,
    activities: { spray: of(spray), lay: of([]), weld: of(weld), people: of([]) },
    hazards: [],
    airC: null,
    gustKmh: null,
    rainChancePct: null,
    deck: { dryAt: null, dewFromAt: null },
    wetFirst: null,
    rain: { known: false, fromAt: null },
    sprayedC: null,
    sprayFromAt: null
  }
}

/** A roof of that day in steps of 5 min, wet as said by the hour of UTC, with one shower. */
function roofOf(wet: (hour: number) => boolean, rainAt: number | null = null): RoofSeries {
  const filmMm = Float64Array.from({ length: 289 }, (_, row) => (wet(row / 12) ? 0.1 : 0))
  const none = new Float64Array(289)
  const surface = { surfaceC: none, spreadK: none, filmMm, filmSpreadMm: none }
  const rainMm = none.map((_, row) => (rainAt !== null && row === rainAt * 12 ? 1 : 0))
  return { startAt: zero, endAt: zero + 86_400, stepS: 300, stale: false, rainMm, substrate: surface, sheet: surface }
}

function plan(outlook: Outlook, at = 4, memory: Memory = emptyMemory(), limits = sheet(), roof: RoofSeries | null = null) {
  const deck = deckOfDay(roof, outlook.from)
  const known = { ...outlook, deck, sprayFromAt: sprayFrom(deck, outlook.airC?.min ?? null, limits) }
  return dayPlan(known, { memory, sheet: limits, now: zero + at * 3600, warmMin: null })
}

describe('the hours to plan with', () => {
  test.each([
    ['windows that touch are one', [hours(4, 6, 'caution'), hours(6, 9), hours(9, 12, 'unknown')], [4, 12]],
    ['of two spells the one with the better window', [hours(4, 10, 'caution'), hours(12, 14)], [12, 14]],
    ['of equals the longer', [hours(4, 6), hours(8, 12)], [8, 12]],
    ['of equally long ones the earlier', [hours(4, 6), hours(8, 10)], [4, 6]]
  ] as const)('%s', (_, windows, [from, to]) => {
    expect(spellOf(windows)).toMatchObject({ from: zero + from * 3600, to: zero + to * 3600 })
  })

  test('none without a window', () => {
    expect(spellOf([])).toBeNull()
  })
})

// Sums by hand from the built-in rates: a whole roll takes 9.6 + 10 + 10.394 + 45 = 74.994 min, 4500 s from whole seconds; see last-sheet.test.ts.
describe('the plan of a day', () => {
  test('is for the hours to spray: last sheet 75 min before they end, what fits, what to stage', () => {
    const found = plan(day([hours(6, 14)]))
    expect(found.lastSheet).toEqual({ at: zero + 14 * 3600 - 4500, closeAt: zero + 14 * 3600, closing: 'window', path: 'sheet' })
    // (480 − 45 − 10) min ÷ 1.020681 min/m²; 416.39 ÷ 90 = 4.6 kits; ÷ 38.4 = 10.8 rolls.
    expect(found.fits?.areaM2).toBeCloseTo(425 / 1.020681231, 2)
    expect(found.stage.map(({ what, count }) => [what, count])).toEqual([
      ['kits', 5],
      ['nozzles', 50],
      ['strips', 11]
    ])
  })

  test('never counts hours that are not known: it says what they would add, and reckons with them only for want of others', () => {
    const found = plan(day([hours(6, 10, 'unknown'), hours(10, 14, 'caution')]))
    expect(found.fits?.areaM2).toBeCloseTo((240 - 55) / 1.020681231, 2)
    expect(found.firstSprayAt).toBe(zero + 10 * 3600)
    expect(found.stage.map(({ count }) => count)).toEqual([3, 30, 5])
    expect(found.unsure).toMatchObject({
      hours: [{ from: zero + 6 * 3600, to: zero + 10 * 3600 }],
      kits: 5,
      firstSprayAt: zero + 6 * 3600,
      all: false
    })
    expect(found.unsure?.fitsM2).toBeCloseTo(425 / 1.020681231, 2)
    const none = plan(day([hours(6, 14, 'unknown')]))
    expect(none.unsure).toMatchObject({ all: true })
    expect(none.fits?.areaM2).toBeCloseTo(425 / 1.020681231, 2)
    expect(plan(day([hours(6, 14)])).unsure).toBeNull()
  })

  test('adds up known hours about unknown ones; the last sheet is that of the last of them', () => {
    const found = plan(day([hours(6, 9), hours(9, 12, 'unknown'), hours(12, 14)]))
    expect(found.fits?.areaM2).toBeCloseTo((180 - 55 + 120 - 55) / 1.020681231, 2)
    expect(found.lastSheet?.at).toBe(zero + 14 * 3600 - 4500)
    expect(found.firstSprayAt).toBe(zero + 6 * 3600)
  })

  test('names no last sheet where the hours to come are too short for one', () => {
    expect(plan(day([hours(6, 7)])).lastSheet).toBeNull()
    expect(plan(day([hours(6, 7.5)])).lastSheet).not.toBeNull()
  })

  test('counts from now on where the hours have begun', () => {
    expect(plan(day([hours(6, 14)]), 10).fits?.areaM2).toBeCloseTo((240 - 55) / 1.020681231, 2)
  })

  test('not before the deck is dry and sheets have relaxed on it: 30 min, 60 on a cold day or one of unknown air', () => {
    const wetUntil8 = roofOf((hour) => hour < 8)
    const found = plan({ ...day([hours(6, 14)]), airC: { min: 12, max: 20 } }, 4, emptyMemory(), sheet(), wetUntil8)
    expect(found.firstSprayAt).toBe(zero + 8.5 * 3600)
    expect(found.deck.dryAt).toBe(zero + 8 * 3600)
    expect(found.fits?.areaM2).toBeCloseTo((330 - 55) / 1.020681231, 2)
    const cold = { ...day([hours(6, 14)]), airC: { min: 9, max: 20 } }
    expect(plan(cold, 4, emptyMemory(), sheet(), wetUntil8).firstSprayAt).toBe(zero + 9 * 3600)
    expect(plan(day([hours(6, 14)]), 4, emptyMemory(), sheet(), wetUntil8).firstSprayAt).toBe(zero + 9 * 3600)
    // Dry before the hours begin: they do.
    expect(plan(day([hours(10, 14)]), 4, emptyMemory(), sheet(), wetUntil8).firstSprayAt).toBe(zero + 10 * 3600)
  })

  test('dew: that of the morning, else that to come; wetness by rain is none', () => {
    expect(
      deckOfDay(
        roofOf((hour) => hour > 2 && hour < 8),
        zero + 4 * 3600
      )
    ).toEqual({ dryAt: zero + 8 * 3600, dewFromAt: zero + 2 * 3600 + 300 })
    expect(
      deckOfDay(
        roofOf((hour) => hour >= 20),
        zero + 4 * 3600
      )
    ).toEqual({ dryAt: null, dewFromAt: zero + 20 * 3600 })
    expect(
      deckOfDay(
        roofOf((hour) => hour >= 20, 19.5),
        zero + 4 * 3600
      )
    ).toEqual({ dryAt: null, dewFromAt: null })
    expect(
      deckOfDay(
        roofOf(() => false),
        zero + 4 * 3600
      )
    ).toEqual({ dryAt: null, dewFromAt: null })
    expect(deckOfDay(null, zero)).toEqual({ dryAt: null, dewFromAt: null })
    expect(
      deckOfDay(
        roofOf(() => true),
        null
      )
    ).toEqual({ dryAt: null, dewFromAt: null })
  })

  test('closes by sunset less the closing-up time, or by rain, where that is first', () => {
    const { sunsetAt } = sunEvents(demoSite, date)
    expect(plan(day([hours(6, 19)])).lastSheet).toMatchObject({ closing: 'sunset', closeAt: (sunsetAt ?? 0) - 3600 })
    const rain = hours(4, 12, 'go', 'rain-now')
    expect(plan(day([hours(6, 14)], [rain])).lastSheet).toMatchObject({ closing: 'rain', closeAt: zero + 12 * 3600 })
    // Rain that has ended before the hours begin closes nothing, nor does another end of the welding hours.
    expect(plan(day([hours(6, 14)], [hours(2, 5, 'go', 'rain-now'), hours(6, 12, 'go', 'wind-mean')])).lastSheet?.closing).toBe('window')
  })

  test('what was laid today and not welded is a backlog, of that day alone', () => {
    const memory = { ...emptyMemory(), today: { ...emptyDay, areaM2: 384, robotM: 42, handM: 3 } }
    const found = plan(day([hours(6, 14)]), 9, memory)
    // Ten rolls: 242 m by robot less 42, 3.57 m by hand less 3: 200 ÷ 2.5 + 0.57 ÷ 0.5 = 81.14 min in place of the wait of 10.
    expect(found.backlog.robotM).toBeCloseTo(200, 9)
    expect(found.backlog.handM).toBeCloseTo(0.57079633, 6)
    expect(found.lastSheet?.path).toBe('backlog')
    expect((found.lastSheet?.closeAt ?? 0) - (found.lastSheet?.at ?? 0)).toBeCloseTo((9.6 + 81.141593 + 10.394159 + 45) * 60, -1)
    const tomorrow = dayPlan(day([hours(6, 14)]), { memory, sheet: sheet(), now: zero - 20 * 3600, warmMin: null })
    expect([tomorrow.backlog, tomorrow.lastSheet?.path]).toEqual([{ robotM: 0, handM: 0 }, 'sheet'])
  })

  test('without hours there is no plan', () => {
    expect(plan(day([]))).toMatchObject({ lastSheet: null, fits: null, stage: [] })
  })

  test('nor with a lap as wide as the sheet, or a strip that cannot be cut', () => {
    const limits = sheet()
    const wide = { ...limits, sheet: { ...limits.sheet, lapMm: 2000 } }
    expect(plan(day([hours(6, 14)]), 4, emptyMemory(), wide)).toMatchObject({ lastSheet: null, fits: null, stage: [] })
    const round = { ...limits, strip: { ...limits.strip, cornerRadiusMm: 200 } }
    expect(plan(day([hours(6, 14)]), 4, emptyMemory(), round)).toMatchObject({ lastSheet: null, stage: [] })
  })
})
