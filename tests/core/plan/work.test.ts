import { describe, expect, test } from 'vitest'
import { backlogOf, metresOf, rollAreaM2, weldMin } from '../../../src/core/plan/work.js'
import { sheet } from '../../support/facts.js'

// Sums by hand, geometry, no source. The sheet of the built-in limits: 2 m wide, lap 80 mm, roll of 20 m; its strip 2150 × 150 mm with
// corners of 25: 2(2150 − 50) = 4200 by robot, 357.079633 by hand (the worked strip of the contract).
const sizes = sheet()

describe('weld metres of an area', () => {
  test('a roll covers 20 m × 1.92 m and takes its lap and one strip', () => {
    expect(rollAreaM2(sizes)).toBeCloseTo(38.4, 9)
    const { robotM, handM } = metresOf(38.4, sizes)
    expect(robotM).toBeCloseTo(20 + 4.2, 9)
    expect(handM).toBeCloseTo(0.357079633, 9)
  })

  test('nothing takes nothing', () => {
    expect(metresOf(0, sizes)).toEqual({ robotM: 0, handM: 0 })
  })

  test.each([Number.NaN, -1, Number.POSITIVE_INFINITY])('%d is no area', (areaM2) => {
    expect(() => metresOf(areaM2, sizes)).toThrow(RangeError)
  })

  test('a lap as wide as the sheet leaves nothing', () => {
    expect(() => metresOf(10, { ...sizes, sheet: { ...sizes.sheet, lapMm: 2000 } })).toThrow(RangeError)
  })
})

describe('the backlog', () => {
  test('is what was laid less what was welded, robot and hand apart', () => {
    const { robotM, handM } = backlogOf({ areaM2: 76.8, robotM: 30, handM: 5 }, sizes)
    // 2 × 24.2 − 30; more by hand than there was is none.
    expect(robotM).toBeCloseTo(18.4, 9)
    expect(handM).toBe(0)
  })

  test('refuses what is no number', () => {
    expect(() => backlogOf({ areaM2: 10, robotM: Number.NaN, handM: 0 }, sizes)).toThrow(RangeError)
    expect(() => backlogOf({ areaM2: 10, robotM: 0, handM: Number.NaN }, sizes)).toThrow(RangeError)
  })
})

test('one gang welds by robot and by hand in turn, several at once', () => {
  const crew = { ...sizes.crew, weldRobotMMin: 2, weldHandMMin: 0.5 }
  expect(weldMin({ robotM: 30, handM: 4 }, { ...crew, gangs: 1 })).toBe(15 + 8)
  expect(weldMin({ robotM: 30, handM: 4 }, { ...crew, gangs: 2 })).toBe(15)
})
