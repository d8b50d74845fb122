import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type LastSheetQuestion, lastSheet } from '../../../src/core/plan/last-sheet.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'

const end = iso('2026-05-04T17:30:00Z')
const sizes = sheet()
const crew = { gangs: 1, sprayM2H: 120, rollM2H: 240, weldRobotMMin: 2.5, weldHandMMin: 0.5, tieInMin: 45 }

function ask(change: Partial<LastSheetQuestion> = {}): LastSheetQuestion {
  return { ends: { window: end, sunset: null, rain: null }, backlog: { robotM: 0, handM: 0 }, crew, sizes, waitMin: 10, ...change }
}

/** Minutes before the end, to the second. */
function minutesLeft(change: Partial<LastSheetQuestion> = {}): number {
  const found = lastSheet(ask(change))
  return found === null ? Number.NaN : (found.closeAt - found.at) / 60
}

// Sums by hand, no source. A roll of 38.4 m²: rolled in 38.4 ÷ 240 h = 9.6 min; 24.2 m by robot ÷ 2.5 = 9.68 min; 0.357079633 m by hand
// ÷ 0.5 = 0.714 min.
describe('the last sheet', () => {
  test('of one gang: roll 9.6 + wait 10 + welds 10.394 + tie-in 45 before the end', () => {
    expect(minutesLeft()).toBeCloseTo(9.6 + 10 + 9.68 + 0.714159 + 45, 1)
    expect(lastSheet(ask())).toMatchObject({ closeAt: end, closing: 'window', path: 'sheet' })
  })

  test('of several: robot and hand at once, 9.6 + 10 + 9.68 + 45', () => {
    expect(minutesLeft({ crew: { ...crew, gangs: 2 } })).toBeCloseTo(74.28, 1)
  })

  test('a backlog shorter than the wait costs nothing: it is welded meanwhile', () => {
    expect(minutesLeft({ backlog: { robotM: 25, handM: 0 } })).toBe(minutesLeft())
    expect(lastSheet(ask({ backlog: { robotM: 25, handM: 0 } }))?.path).toBe('sheet')
  })

  test('a longer one binds: 100 m ÷ 2.5 = 40 min in place of the wait', () => {
    const backlog = { robotM: 100, handM: 0 }
    expect(minutesLeft({ backlog })).toBeCloseTo(9.6 + 40 + 10.394159 + 45, 1)
    expect(lastSheet(ask({ backlog }))?.path).toBe('backlog')
    // Several gangs weld it during the rolling too: max(9.6 + 10, 40) + 9.68 + 45.
    expect(minutesLeft({ backlog, crew: { ...crew, gangs: 3 } })).toBeCloseTo(94.68, 1)
  })

  test.each([
    ['window', { window: end, sunset: end + 60, rain: null }],
    ['window', { window: end, sunset: end, rain: end }],
    ['sunset', { window: end, sunset: end - 60, rain: null }],
    ['rain', { window: end, sunset: end - 60, rain: end - 120 }]
  ] as const)('the first end closes: %s', (closing, ends) => {
    const found = lastSheet(ask({ ends }))
    expect(found).toMatchObject({ closing, closeAt: Math.min(...Object.values(ends).filter((at) => at !== null)) })
  })

  test('without a window there is none', () => {
    expect(lastSheet(ask({ ends: { window: null, sunset: end, rain: end } }))).toBeNull()
  })

  const wrong: readonly Partial<LastSheetQuestion>[] = [
    { backlog: { robotM: Number.NaN, handM: 0 } },
    { backlog: { robotM: 0, handM: -1 } },
    { ends: { window: Number.NaN, sunset: null, rain: null } },
    { ends: { window: end, sunset: Number.NaN, rain: null } },
    { waitMin: Number.NaN },
    ...(['gangs', 'sprayM2H', 'rollM2H', 'weldRobotMMin', 'weldHandMMin', 'tieInMin'] as const).map((key) => ({
      crew: { ...crew, [key]: Number.NaN }
    })),
    { crew: { ...crew, gangs: 0 } },
    { crew: { ...crew, gangs: 1.5 } },
    { crew: { ...crew, rollM2H: 0 } }
  ]
  test.each(wrong)('%j is refused', (change) => {
    expect(() => lastSheet(ask(change))).toThrow(RangeError)
  })
})

// Laws of the plan, common sense, no source.
describe('on any crew', () => {
  const rate = fc.double({ min: 0.01, max: 1000, noNaN: true })
  const metres = fc.record({ robotM: fc.double({ min: 0, max: 5000, noNaN: true }), handM: fc.double({ min: 0, max: 500, noNaN: true }) })
  const crews = fc.record({
    gangs: fc.integer({ min: 1, max: 4 }),
    sprayM2H: rate,
    rollM2H: rate,
    weldRobotMMin: rate,
    weldHandMMin: rate,
    tieInMin: fc.integer({ min: 0, max: 240 })
  })
  const at = (question: Partial<LastSheetQuestion>) => lastSheet(ask(question))?.at ?? Number.NaN

  test('a longer backlog never moves it later', () => {
    fc.assert(
      fc.property(crews, metres, metres, (own, backlog, more) => {
        const longer = { robotM: backlog.robotM + more.robotM, handM: backlog.handM + more.handM }
        expect(at({ crew: own, backlog: longer })).toBeLessThanOrEqual(at({ crew: own, backlog }))
      })
    )
  })

  test('a faster crew never moves it earlier', () => {
    const rates = ['sprayM2H', 'rollM2H', 'weldRobotMMin', 'weldHandMMin'] as const
    fc.assert(
      fc.property(crews, metres, fc.constantFrom(...rates), fc.double({ min: 1, max: 10, noNaN: true }), (own, backlog, key, times) => {
        const faster = { ...own, [key]: own[key] * times }
        expect(at({ crew: faster, backlog })).toBeGreaterThanOrEqual(at({ crew: own, backlog }))
      })
    )
  })

  test('several gangs are never earlier than one', () => {
    fc.assert(
      fc.property(crews, metres, (own, backlog) => {
        expect(at({ crew: { ...own, gangs: 2 }, backlog })).toBeGreaterThanOrEqual(at({ crew: { ...own, gangs: 1 }, backlog }))
      })
    )
  })

  test('it is never after an end, and a whole second', () => {
    fc.assert(
      fc.property(crews, metres, fc.integer({ min: -36_000, max: 36_000 }), (own, backlog, shift) => {
        const found = at({ crew: own, backlog, ends: { window: end, sunset: end + shift, rain: null } })
        expect(found).toBeLessThanOrEqual(Math.min(end, end + shift))
        expect(Number.isInteger(found)).toBe(true)
      })
    )
  })
})
