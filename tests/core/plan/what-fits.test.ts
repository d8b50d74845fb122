import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { LastSheetQuestion } from '../../../src/core/plan/last-sheet.js'
import { paceM2H, whatFits } from '../../../src/core/plan/what-fits.js'
import { sheet } from '../../support/facts.js'
import { iso } from '../../support/instant.js'

const from = iso('2026-05-04T06:00:00Z')
const sizes = sheet()
const crew = { gangs: 1, sprayM2H: 120, rollM2H: 240, weldRobotMMin: 2.5, weldHandMMin: 0.5, tieInMin: 45 }
const none = { robotM: 0, handM: 0 }

function ask(change: Partial<LastSheetQuestion> = {}, hours = 10): LastSheetQuestion {
  return { ends: { window: from + hours * 3600, sunset: null, rain: null }, backlog: none, crew, sizes, waitMin: 10, ...change }
}

// Sums by hand, no source. Per m²: spray 0.5 min, roll 0.25, robot 24.2 m ÷ 38.4 m² ÷ 2.5 = 0.252083, hand 0.357079633 ÷ 38.4 ÷ 0.5 = 0.018598.
describe('what fits', () => {
  test('one gang: (600 − 45 − 10) min ÷ 1.020681 min/m², most of it spraying', () => {
    const found = whatFits(from, ask())
    expect(found?.areaM2).toBeCloseTo(545 / (0.5 + 0.25 + 0.252083333 + 0.018597898), 3)
    expect(found?.work).toBe('spray')
    expect(paceM2H(crew, sizes)).toBeCloseTo(60 / 1.020681231, 5)
  })

  test('several: the slowest counts, 545 min ÷ 0.5', () => {
    expect(whatFits(from, ask({ crew: { ...crew, gangs: 2 } }))).toEqual({ areaM2: 1090, work: 'spray' })
    expect(paceM2H({ ...crew, gangs: 2 }, sizes)).toBeCloseTo(120, 9)
  })

  test('a slow robot binds: 545 min × 0.5 m/min ÷ (24.2 ÷ 38.4) m/m²', () => {
    const found = whatFits(from, ask({ crew: { ...crew, gangs: 2, weldRobotMMin: 0.5 } }))
    expect(found?.areaM2).toBeCloseTo((545 * 0.5) / (24.2 / 38.4), 6)
    expect(found?.work).toBe('robot')
  })

  test('a backlog takes its time from the welders: 750 m ÷ 2.5 = 300 min', () => {
    const found = whatFits(from, ask({ crew: { ...crew, gangs: 2 }, backlog: { robotM: 750, handM: 0 } }))
    expect(found?.areaM2).toBeCloseTo((600 - 45 - 300) / 0.252083333, 3)
    expect(found?.work).toBe('robot')
  })

  test('no time left: nothing; no window: not known', () => {
    expect(whatFits(from, ask({}, 0.5))?.areaM2).toBe(0)
    expect(whatFits(from + 86_400, ask())?.areaM2).toBe(0)
    expect(whatFits(from, ask({ ends: { window: null, sunset: from, rain: null } }))).toBeNull()
  })

  test('NaN is refused', () => {
    expect(() => whatFits(Number.NaN, ask())).toThrow(RangeError)
    expect(() => whatFits(from, ask({ crew: { ...crew, sprayM2H: Number.NaN } }))).toThrow(RangeError)
  })

  // Laws of the plan, common sense, no source.
  test('several gangs never fit less than one, nor a longer backlog more', () => {
    const rate = fc.double({ min: 0.01, max: 1000, noNaN: true })
    const metres = fc.double({ min: 0, max: 2000, noNaN: true })
    fc.assert(
      fc.property(rate, rate, rate, rate, metres, metres, (sprayM2H, rollM2H, weldRobotMMin, weldHandMMin, robotM, more) => {
        const own = { gangs: 1, sprayM2H, rollM2H, weldRobotMMin, weldHandMMin, tieInMin: 45 }
        const area = (gangs: number, m: number) => whatFits(from, ask({ crew: { ...own, gangs }, backlog: { robotM: m, handM: 0 } }))?.areaM2 ?? -1
        expect(area(2, robotM)).toBeGreaterThanOrEqual(area(1, robotM) * (1 - 1e-12))
        for (const gangs of [1, 2]) expect(area(gangs, robotM + more)).toBeLessThanOrEqual(area(gangs, robotM))
      })
    )
  })
})
