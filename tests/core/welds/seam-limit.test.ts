import { describe, expect, it } from 'vitest'
import { leastMm, seamLimit } from '../../../src/core/welds/seam-limit.js'
import { sheet } from '../../support/facts.js'

const limit = (min: number, unit: 'mm' | 'in' = 'mm') => ({ unit, min, max: null, cautionBelow: null, cautionAbove: null, basis: 'site' })

describe('what a weld must reach', () => {
  const unequal = sheet({ seamWidthRobot: limit(25), seamWidthHand: limit(40) })

  it('is its own for robot and hand, the wider for any other and for what either may weld', () => {
    expect(leastMm(seamLimit('robot', unequal))).toBe(25)
    expect(leastMm(seamLimit('hand', unequal))).toBe(40)
    expect(leastMm(seamLimit('R2', unequal))).toBe(40)
    expect(leastMm(seamLimit(null, unequal))).toBe(40)
    expect(leastMm(seamLimit('R2', sheet({ seamWidthRobot: limit(45), seamWidthHand: limit(40) })))).toBe(45)
  })

  it('is compared in one unit', () => {
    const mixed = sheet({ seamWidthRobot: limit(1.5, 'in'), seamWidthHand: limit(38) })
    expect(leastMm(seamLimit('R2', mixed))).toBeCloseTo(38.1, 9)
  })

  it('is nothing where the sheet has no least width', () => {
    expect(leastMm({ ...limit(0), min: null })).toBe(0)
  })
})
