import { describe, expect, it } from 'vitest'
import { failedBonds } from '../../../src/core/closing/failed-bonds.js'
import { type Closing, emptyClosing, stepClosing } from '../../../src/core/log/states/closing.js'

/** One square of board after another, as they are folded. Common practice, no source. */
function folded(passed: readonly (boolean | null)[]): Closing {
  return passed.reduce<Closing>(
    (before, each, index) =>
      stepClosing(before, {
        type: 'bond',
        subject: 'bond:board',
        data: { substrate: 'board', passed: each, broke: null },
        at: index * 60,
        seq: index + 1
      } as never),
    emptyClosing
  )
}

describe('test squares that failed', () => {
  it.each([
    [[false], ['board']],
    [[false, null], ['board']],
    [[false, null, true], []],
    [[true, false], ['board']],
    [[null], []],
    [[true, null], []]
  ] as const)('of %j leave %j', (passed, failed) => {
    expect(failedBonds([null, { closing: folded(passed) } as never])).toEqual(failed)
  })

  it('are made good by a good one of the next day, not by one that is not cured', () => {
    const day = (passed: boolean | null) => ({ closing: folded([passed]) }) as never
    expect(failedBonds([day(false), day(null)])).toEqual(['board'])
    expect(failedBonds([day(false), day(true)])).toEqual([])
  })
})
