import { describe, expect, it } from 'vitest'
import { type ReachInput, reachM } from '../../../src/core/kits/reach.js'

// Kinematics worked by hand; the ways are common practice, no source.
const run: ReachInput = { how: 'stop', openTimeS: 90, handOverS: 10, rollS: 20, sprayMs: 0.3, unrollMs: 0.2, lagS: 15 }

describe('reach', () => {
  it('stop and cover goes with the slower of the two', () => {
    expect(reachM(run)).toBeCloseTo(60 * 0.2, 12)
    expect(reachM({ ...run, unrollMs: 0.5 })).toBeCloseTo(60 * 0.3, 12)
  })

  it('following has no limit while the unrolling keeps up', () => {
    expect(reachM({ ...run, how: 'follow', unrollMs: 0.3 })).toBeNull()
    expect(reachM({ ...run, how: 'follow', unrollMs: 0.4 })).toBeNull()
  })

  it('following more slowly ends where the foam is as old as its open time', () => {
    const metres = reachM({ ...run, how: 'follow' }) ?? 0
    // Sprayed at x/0.3, covered at 15 + x/0.2, rolled 20 s later: that is 90 s after spraying.
    expect(15 + metres / 0.2 + 20 - metres / 0.3).toBeCloseTo(90, 9)
  })

  it('following too far behind reaches nothing, however fast', () => {
    expect(reachM({ ...run, how: 'follow', unrollMs: 1, lagS: 70 })).toBe(0)
    expect(reachM({ ...run, how: 'follow', unrollMs: 0 })).toBe(0)
  })

  it('flopping half a sheet takes no rolling time', () => {
    expect(reachM({ ...run, how: 'flop' })).toBeCloseTo(80 * 0.3, 12)
  })

  it('is 0 when the time is used up, and for what is no number', () => {
    expect(reachM({ ...run, openTimeS: 20 })).toBe(0)
    for (const how of ['stop', 'follow', 'flop'] as const) {
      expect(reachM(Object.freeze({ ...run, how, openTimeS: Number.NaN }))).toBe(0)
      expect(reachM({ ...run, how, sprayMs: -1 })).toBe(0)
    }
  })
})
