import { describe, expect, test } from 'vitest'
import type { Memory } from '../../../src/core/gather/memory.js'
import { localTime } from '../../../src/core/instant.js'
import { sprayFrom } from '../../../src/core/plan/deck-wait.js'
import { type Outlook, outlook } from '../../../src/core/plan/outlook.js'
import type { RoofSeries } from '../../../src/core/roof/series.js'
import { emptyHour, type Hour } from '../../../src/core/weather/hour.js'
import { sheet } from '../../support/facts.js'
import { forecastOf } from '../../support/hours.js'
import { iso } from '../../support/instant.js'
import { emptyMemory } from '../../support/memory.js'

const zone = 'Europe/Berlin'
const midnight = iso('2026-05-03T22:00:00Z')
/** 05:30 in Berlin. */
const now = midnight + 5.5 * 3600
const calm: Partial<Hour> = { airC: 14, rhPct: 50, windKmh: 2, gustKmh: 4, cloudPct: 20, rainMm: 0, rainChancePct: 0, thunder: false }

function calmDay(airC = 14) {
  const hours = Array.from({ length: 27 }, (_, index): Hour => ({ ...emptyHour(midnight + index * 3600), ...calm, airC }))
  return forecastOf('2026-05-04T03:00:00Z', hours)
}

/** A roof at 16 °C, its film by the local hour: how much, and one standard deviation. */
function roofWith(film: (hour: number) => readonly [mm: number, spreadMm: number]): RoofSeries {
  const rows = 24 * 12 + 1
  const filmMm = Float64Array.from({ length: rows }, (_, row) => film(row / 12)[0])
  const filmSpreadMm = Float64Array.from({ length: rows }, (_, row) => film(row / 12)[1])
  const surface = { surfaceC: new Float64Array(rows).fill(16), spreadK: new Float64Array(rows).fill(0.5), filmMm, filmSpreadMm }
  return { startAt: midnight, endAt: midnight + 86_400, stepS: 300, stale: false, rainMm: new Float64Array(rows), substrate: surface, sheet: surface }
}

function look(roof: RoofSeries | null, memory: Memory = emptyMemory(), airC = 14): Outlook {
  return outlook(memory, calmDay(airC), sheet(), '2026-05-04', now, roof)
}

const spans = (list: readonly { readonly from: number; readonly to: number; readonly outcome: string }[]) =>
  list.map(({ from, to, outcome }) => `${localTime(from, zone)}-${localTime(to, zone)} ${outcome}`)

describe('spraying waits for the deck', () => {
  // Wet beyond doubt until 07:30, in doubt until it is dry at 09:10 by the likely course; then 30 min for the sheets to relax.
  const wetMorning = roofWith((hour) => (hour < 7.5 ? [0.1, 0.01] : hour < 9 + 1 / 6 ? [0.05, 0.05] : [0, 0]))

  test('no window before it is dry and the sheets have relaxed', () => {
    const { activities, sprayFromAt, deck } = look(wetMorning)
    expect(deck.dryAt).toBe(midnight + (9 * 60 + 10) * 60)
    expect(sprayFromAt).toBe(midnight + (9 * 60 + 40) * 60)
    expect(spans(activities.spray.windows)).toEqual(['09:45-19:30 go'])
    expect(activities.spray.windows[0]).toMatchObject({ opens: 'sheet-relaxed', closes: 'daylight' })
  })

  test('what is seen tells wet beyond doubt from doubt', () => {
    const { bands } = look(wetMorning).activities.spray
    expect(spans(bands).slice(0, 3)).toEqual(['05:30-07:30 no-go', '07:30-09:45 unknown', '09:45-19:30 go'])
  })

  test('nothing else waits for it', () => {
    const { lay, weld, people } = look(wetMorning).activities
    const dry = look(roofWith(() => [0, 0])).activities
    expect([spans(lay.windows), spans(weld.windows), spans(people.windows)]).toEqual([
      spans(dry.lay.windows),
      spans(dry.weld.windows),
      spans(dry.people.windows)
    ])
  })

  test('a deck that stays wet has no window, and that is what binds', () => {
    const { spray } = look(roofWith(() => [0.1, 0.01])).activities
    expect([spray.outcome, spray.windows]).toEqual(['no-go', []])
    expect(spray.binding).toMatchObject({ rule: 'substrate-dry', outcome: 'no-go', origin: 'model', fix: 'dry:substrate', value: false })
  })

  test('wet again in the afternoon: shut while that is beyond doubt', () => {
    const { spray } = look(roofWith((hour) => (hour >= 13 && hour < 15 ? [0.1, 0.01] : [0, 0]))).activities
    expect(spans(spray.windows)).toEqual(['06:00-13:00 go', '15:00-19:30 go'])
    expect(spray.windows[0]?.closes).toBe('substrate-dry')
  })

  test('a dry deck, or one nobody knows of, holds nothing up', () => {
    expect(look(roofWith(() => [0, 0])).sprayFromAt).toBeNull()
    expect(spans(look(null).activities.spray.windows)).toEqual(['06:00-19:30 go'])
  })

  test('what is said now counts from the next step of the roof', () => {
    // Stated dry at 05:30: the roof has it from there on.
    expect(look(roofWith((hour) => (hour <= 5.5 ? [0.1, 0.01] : [0, 0]))).sprayFromAt).toBeNull()
  })

  test('on a cold day, or one whose air nobody knows, sheets take an hour to relax', () => {
    const dryAt = midnight + 8 * 3600
    expect(sprayFrom({ dryAt, dewFromAt: null }, 9.9, sheet())).toBe(dryAt + 3600)
    expect(sprayFrom({ dryAt, dewFromAt: null }, 10, sheet())).toBe(dryAt + 1800)
    expect(sprayFrom({ dryAt, dewFromAt: null }, null, sheet())).toBe(dryAt + 3600)
    expect(sprayFrom({ dryAt: null, dewFromAt: null }, 5, sheet())).toBeNull()
  })
})
