import { describe, expect, test } from 'vitest'
import { type StageQuestion, stage } from '../../../src/core/plan/stage.js'
import { sheet } from '../../support/facts.js'

const sizes = sheet()

function ask(change: Partial<StageQuestion> = {}): StageQuestion {
  return { areaM2: 500, foam: { yieldM2PerKit: 90, nozzlesPerKit: 10 }, sizes, warmMin: null, paceM2H: 60, ...change }
}

// Common practice, no source; sums by hand: 500 ÷ 90 = 5.6, 500 ÷ 38.4 = 13.02.
describe('what to stage', () => {
  test('kits by yield, nozzles by kit, strips by roll length', () => {
    expect(stage(ask())).toEqual([
      { what: 'kits', count: 6, warming: null },
      { what: 'nozzles', count: 60, warming: null },
      { what: 'strips', count: 14, warming: null }
    ])
  })

  test('warming at once: a kit lasts 90 min, one that warms for 300 needs ceil(300 ÷ 90) + 1', () => {
    expect(stage(ask({ warmMin: 300 }))[0]).toEqual({ what: 'kits', count: 6, warming: 5 })
    expect(stage(ask({ warmMin: 3000 }))[0]).toEqual({ what: 'kits', count: 6, warming: 6 })
  })

  test('whole kits exactly are no kit more; nothing needs nothing', () => {
    expect(stage(ask({ areaM2: 90 * 0.1 * 10 }))[0]?.count).toBe(1)
    expect(stage(ask({ areaM2: 0 }))).toEqual([])
    expect(stage(ask({ foam: { yieldM2PerKit: 90, nozzlesPerKit: 0 } })).map(({ what }) => what)).toEqual(['kits', 'strips'])
  })

  test.each([{ areaM2: Number.NaN }, { areaM2: -1 }, { warmMin: Number.NaN }, { paceM2H: Number.NaN }, { paceM2H: 0 }])('%j is refused', (change) => {
    expect(() => stage(ask(change))).toThrow(RangeError)
  })
})
