import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cutStock, type StockPlan } from '../../../src/core/sheets/stock.js'
import { readTruth } from '../../truth/rows.js'

interface Instance {
  readonly id: string
  readonly roll: number
  readonly lengths: readonly number[]
  /** The least, or the best that anybody found. */
  readonly rolls: number
  readonly source: string
}

const published = readTruth('stock.json') as readonly Instance[]

/** What makes a plan one: every piece once, nothing longer than the roll, what is left is left. */
function checkPlan({ rolls, bound, exact }: StockPlan, lengths: readonly number[], roll: number): void {
  expect(rolls.flatMap(({ pieces }) => pieces).sort((a, b) => a - b)).toEqual(lengths.map((_, index) => index))
  for (const { pieces, leftMm } of rolls) {
    expect(leftMm).toBeGreaterThanOrEqual(0)
    expect(pieces.reduce((sum, piece) => sum + (lengths[piece] as number), 0) + leftMm).toBeCloseTo(roll, 2)
  }
  expect(bound).toBeLessThanOrEqual(rolls.length)
  if (exact) expect(bound).toBe(rolls.length)
}

/** The least number of rolls by trying every place for every piece. */
function bruteForce(lengths: readonly number[], roll: number): number {
  let best = lengths.length
  const place = (index: number, left: readonly number[]): void => {
    if (left.length >= best) return
    const length = lengths[index]
    if (length === undefined) {
      best = left.length
      return
    }
    for (const [at, room] of left.entries())
      if (room >= length)
        place(
          index + 1,
          left.map((each, other) => (other === at ? room - length : each))
        )
    place(index + 1, [...left, roll - length])
  }
  place(0, [])
  return best
}

describe('published instances', () => {
  it.each(published)('$id: $source', ({ roll, lengths, rolls }) => {
    const plan = cutStock(lengths, roll)

    checkPlan(plan, lengths, roll)
    expect(plan.bound).toBeLessThanOrEqual(rolls)
    // Where it is not known to be least it is one too many at most, and says so.
    expect(plan.rolls.length).toBeLessThanOrEqual(plan.exact ? rolls : rolls + 1)
    expect(plan.rolls.length).toBeGreaterThanOrEqual(rolls)
  })

  it('are met, most of them', () => {
    const met = published.filter(({ roll, lengths, rolls }) => cutStock(lengths, roll).rolls.length === rolls)
    expect(met.map(({ id }) => id)).toEqual(['u120_02', 'u120_19', 'paper machine'])
  })
})

describe('against brute force', () => {
  const lengths = fc.array(fc.integer({ min: 1, max: 20 }), { maxLength: 9 })

  it('never more rolls, never fewer, and it is known', () => {
    fc.assert(
      fc.property(lengths, (each) => {
        const plan = cutStock(each, 20)
        checkPlan(plan, each, 20)
        expect(plan.exact).toBe(true)
        expect(plan.rolls).toHaveLength(bruteForce(each, 20))
      }),
      { numRuns: 400, seed: 3 }
    )
  })

  // By hand: longest first gives 4+3, 3+2+2 and 2; 4+2+2 and 3+3+2 are two.
  it('finds what longest-first misses', () => {
    const awkward = [4, 3, 3, 2, 2, 2]
    const { rolls, bound, exact } = cutStock(awkward, 8)
    expect({ rolls: rolls.length, bound, exact }).toEqual({ rolls: 2, bound: 2, exact: true })
  })
})

describe('many pieces', () => {
  it('are fitted and say their bound', () => {
    const lengths = Array.from({ length: 3000 }, (_, index) => 300 + ((index * 7919) % 19_000))
    const plan = cutStock(lengths, 20_000)
    checkPlan(plan, lengths, 20_000)
    // Best fit decreasing: at most 11/9 of the least (Johnson 1974, from memory).
    expect(plan.rolls.length).toBeLessThanOrEqual((11 / 9) * plan.bound + 4)
  })
})

describe('what is no cutting', () => {
  it('no pieces are no rolls', () => {
    expect(cutStock([], 20_000)).toEqual({ rolls: [], bound: 0, exact: true })
  })

  it('a piece of the whole roll leaves nothing, in floating point too', () => {
    expect(cutStock([0.1 + 0.2, 0.3], 0.3).rolls.map(({ leftMm }) => leftMm)).toEqual([0, 0])
  })

  it.each([[[20_001]], [[0]], [[-1]], [[Number.NaN]], [[Number.POSITIVE_INFINITY]]])('%j from 20 m is refused', (lengths) => {
    expect(() => cutStock(lengths, 20_000)).toThrow(RangeError)
  })

  it.each([0, -1, Number.NaN, 2e6])('a roll of %d mm is refused', (roll) => {
    expect(() => cutStock([], roll)).toThrow(RangeError)
  })
})
