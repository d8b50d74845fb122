import { describe, expect, it } from 'vitest'
import { conductionTrail } from '../../../src/core/kits/kit-model.js'
import { learnMixing, type ReadingPair } from '../../../src/core/kits/learn.js'
import { steady } from '../../../src/core/kits/place.js'
import { valueAt } from '../../../src/core/kits/trail.js'

const kit = { radiusM: 0.15, heightM: 0.45, rhoKgM3: 1100, cJKgK: 1900, kWMK: 0.18, hWM2K: 8, exposedEnds: 2 } as const
const sheetMixing = 5

/** Invented readings: kits of a known mixing, warmed some hours, read with an error that repeats. */
function pairsOf(mixing: number, count: number, errorsK: readonly number[] = [0]): readonly ReadingPair[] {
  return Array.from({ length: count }, (_, index) => {
    const around = steady({ toC: 30, hWM2K: 8 })
    const from = { at: 0, c: 4 + (index % 5) }
    const at = 3600 * (4 + (index % 6))
    const c = valueAt(conductionTrail(kit, mixing, from, at, around), 'meanC', at)! + errorsK[index % errorsK.length]!
    return { from, mixed: { at, c }, around }
  })
}

describe('learned mixing', () => {
  it('is the sheet’s with few readings', () => {
    for (const pairs of [[], pairsOf(2, 1), pairsOf(2, 2)]) expect(learnMixing(kit, sheetMixing, pairs).mixing).toBe(sheetMixing)
  })

  it.each([1.5, 2.5, 4])('comes near %d with many', (mixing) => {
    const learned = learnMixing(kit, sheetMixing, pairsOf(mixing, 30, [0.4, -0.3, 0.1, -0.5, 0.3]))
    expect(learned.pairs).toBe(30)
    expect(Math.abs(learned.mixing - mixing)).toBeLessThan(Math.max(0.25 * mixing, 2 * learned.spread))
  })

  it('grows surer with every reading', () => {
    const spreads = [3, 10, 30].map((count) => learnMixing(kit, sheetMixing, pairsOf(3, count)).spread)
    expect(spreads[1]!).toBeLessThan(spreads[0]!)
    expect(spreads[2]!).toBeLessThan(spreads[1]!)
  })

  it('stays inside 1…20, whatever was read', () => {
    const impossible = pairsOf(3, 9).map((pair, index) => ({ ...pair, mixed: { ...pair.mixed, c: index % 2 === 0 ? 80 : 79 } }))
    const learned = learnMixing(kit, sheetMixing, impossible)
    expect(learned.mixing).toBeGreaterThanOrEqual(1)
    expect(learned.mixing).toBeLessThanOrEqual(20)
    expect(learned.spread).toBeGreaterThanOrEqual(0)
  })

  it('one mistyped reading does not decide', () => {
    const typed = [...pairsOf(3, 12), { ...pairsOf(3, 1)[0]!, mixed: { at: 6 * 3600, c: 2 } }]
    expect(Math.abs(learnMixing(kit, sheetMixing, typed).mixing - learnMixing(kit, sheetMixing, pairsOf(3, 12)).mixing)).toBeLessThan(0.5)
  })

  it('leaves out what says nothing: too soon, too late, not known, no number', () => {
    const pair = pairsOf(3, 1)[0]!
    const useless: readonly ReadingPair[] = [
      { ...pair, mixed: { at: 1800, c: 8 } },
      { ...pair, mixed: { at: 11 * 86_400, c: 8 } },
      { ...pair, mixed: { at: Number.NaN, c: 8 } },
      { ...pair, mixed: { at: 7200, c: Number.NaN } },
      { ...pair, from: { at: 0, c: Number.NaN } },
      { ...pair, around: () => null }
    ]
    expect(learnMixing(kit, sheetMixing, useless)).toMatchObject({ mixing: sheetMixing, pairs: 0 })
  })

  it('refuses a sheet’s factor that is none', () => {
    for (const mixing of [0, Number.NaN]) expect(() => learnMixing(kit, mixing, [])).toThrow(RangeError)
  })
})
