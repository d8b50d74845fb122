import { describe, expect, it } from 'vitest'
import { canonical } from '../../../src/core/log/canonical.js'
import { addLast, type Folded, refold } from '../../../src/core/log/fold.js'
import { type RandomEntry, randomLog } from '../../support/random-log.js'

/** Folds a log entry by entry, as an append does, and compares every subject with a fold of all its entries in another order. */
function followAndCompare(log: readonly RandomEntry[]): string[] {
  const bySubject = new Map<string, RandomEntry[]>()
  const states = new Map<string, Folded | null>()

  for (const entry of log) {
    for (const subject of entry.touches) {
      const all = bySubject.get(subject) ?? []
      bySubject.set(subject, all)
      all.push(entry)
      states.set(subject, addLast(subject, states.get(subject) ?? null, entry) ?? refold(subject, all))
    }
  }

  expect(states.size).toBeGreaterThan(20)
  for (const [subject, entries] of bySubject) {
    const shuffled = [...entries].reverse()
    expect(canonical(states.get(subject) ?? null), subject).toBe(canonical(refold(subject, shuffled)))
  }
  return log.map(({ type }) => type)
}

describe('fold', () => {
  it('comes to the same state entry by entry as by folding everything at the end: 10,000 random entries, undos, corrections, late arrivals', () => {
    const kinds = new Set<string>()
    for (let seed = 1; seed <= 10; seed += 1) for (const kind of followAndCompare(randomLog(1_000, seed))) kinds.add(kind)

    expect([...kinds].sort()).toEqual([
      'bond',
      'correction',
      'coupon',
      'kit',
      'laid',
      'note',
      'photo',
      'probe',
      'reading',
      'repair',
      'seal',
      'setting',
      'statement',
      'undo',
      'void',
      'welder'
    ])
  })

  it('leaves out what was undone and puts a correction in its place', () => {
    const reading = (seq: number, at: string, airC: number) => ({ seq, at, type: 'reading' as const, subject: 'day:2026-05-04', data: { airC } })
    const first = reading(1, '2026-05-04T06:00:00Z', 10)
    const second = reading(2, '2026-05-04T07:00:00Z', 12)
    const undo = { seq: 3, at: '2026-05-04T07:01:00Z', type: 'undo' as const, subject: 'day:2026-05-04', data: { target: 2 } }
    const correction = {
      seq: 4,
      at: '2026-05-04T07:02:00Z',
      type: 'correction' as const,
      subject: 'day:2026-05-04',
      data: { target: 1, data: { airC: 9 } }
    }
    const air = (entries: Parameters<typeof refold>[1]) =>
      (refold('day:2026-05-04', entries)?.is as { latest: { airC?: { value: number } } } | undefined)?.latest.airC?.value

    expect(air([first, second])).toBe(12)
    expect(air([first, second, undo])).toBe(10)
    expect(air([first, second, undo, correction])).toBe(9)
  })

  it('lets a late entry stand behind a later reading, and an entry of the future wait', () => {
    const entry = (seq: number, at: string, airC: number) => ({ seq, at, type: 'reading' as const, subject: 'day:2026-05-04', data: { airC } })
    const later = entry(1, '2026-05-04T08:00:00Z', 15)
    const late = entry(2, '2026-05-04T06:00:00Z', 8)

    expect(addLast('day:2026-05-04', refold('day:2026-05-04', [later]), late)).toBeNull()
    const state = refold('day:2026-05-04', [later, late])?.is as { latest: { airC: { value: number } } }
    expect(state.latest.airC.value).toBe(15)
    const early = refold('day:2026-05-04', [later, late], 1_777_874_400)?.is as { latest: { airC: { value: number } } }
    expect(early.latest.airC.value).toBe(8)
  })

  it('never gives a void number twice, not even after an undo', () => {
    const found = { course: 1, on: 'lap', distanceM: 1, lengthMm: 30, causes: [] }
    const log = [
      { seq: 1, at: '2026-05-04T08:00:00Z', type: 'void' as const, subject: 'void:1', data: found },
      { seq: 2, at: '2026-05-04T08:01:00Z', type: 'undo' as const, subject: 'void:1', data: { target: 1 } }
    ]

    const site = refold('site', log)?.is as { voids: { highest: number; total: number } }
    expect(site.voids).toMatchObject({ highest: 1, total: 0 })
    expect(refold('void:1', log)?.is).toBeNull()
  })
})
