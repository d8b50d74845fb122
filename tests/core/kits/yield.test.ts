import { describe, expect, it } from 'vitest'
import { meanYield, offRatio, yieldsBy } from '../../../src/core/kits/yield.js'

const kits = [
  { usedM2: 90, lot: 'B', emptiedAt: 20 },
  { usedM2: 70, lot: 'A', emptiedAt: 10 },
  { usedM2: 80, lot: null, emptiedAt: 10 }
]

describe('yield (common practice, no source)', () => {
  it('is the mean of the kits that are empty; of none nothing is known', () => {
    expect(meanYield(kits)).toEqual({ m2PerKit: 80, kits: 3 })
    expect(meanYield([])).toBeNull()
  })

  it('by lot, those of no known lot left out; by day', () => {
    expect(yieldsBy(kits, ({ lot }) => lot)).toEqual([
      { name: 'A', m2PerKit: 70, kits: 1 },
      { name: 'B', m2PerKit: 90, kits: 1 }
    ])
    expect(yieldsBy(kits, ({ emptiedAt }) => String(emptiedAt))).toEqual([
      { name: '10', m2PerKit: 75, kits: 2 },
      { name: '20', m2PerKit: 90, kits: 1 }
    ])
  })

  it('parts that empty by more than five points apart were sprayed off ratio', () => {
    expect(offRatio({ isoPct: 20, resinPct: 15 })).toBe(false)
    expect(offRatio({ isoPct: 20, resinPct: 14.9 })).toBe(true)
    expect(offRatio({ isoPct: 14.9, resinPct: 20 })).toBe(true)
  })
})
