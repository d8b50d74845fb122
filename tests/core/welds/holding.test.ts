import { describe, expect, it } from 'vitest'
import { hold, lackingForRelease, metresOf, noHold, release } from '../../../src/core/welds/holding.js'

// All of it: common practice, no source.
const held = { ...noHold, clearedM: 5, sincePassM: 3, onHoldM: 20, goodCuts: 2, probed: true }

describe('metres on hold', () => {
  it('are released in parts, never more than there are, and begin anew once none is left', () => {
    expect(release(held, 8)).toEqual({ ...held, onHoldM: 12, releasedM: 8 })
    expect(release(held, 500)).toEqual({ ...held, onHoldM: 0, releasedM: 20, goodCuts: 0, probed: false })
  })

  it.each([
    [{ ...held, goodCuts: 1 }, 'no-good-cuts'],
    [{ ...held, probed: false }, 'not-probed'],
    [{ ...held, onHoldM: 0 }, 'nothing-on-hold']
  ])('%o stay: %s', (state, lack) => {
    expect(lackingForRelease(state)).toBe(lack)
    expect(release(state, 5)).toBe(state)
  })

  it.each([0, -1, Number.NaN])('%d of them are no metres', (metres) => {
    expect(release(held, metres)).toBe(held)
    expect(hold(held, metres)).toBe(held)
  })

  it('that are new were neither probed nor cut', () => {
    expect(hold(held, 2)).toMatchObject({ onHoldM: 22, goodCuts: 0, probed: false })
  })

  it('add up with the others to what was welded', () => {
    expect(metresOf({ ...held, releasedM: 7 })).toEqual({ clearedM: 8, onHoldM: 20, releasedM: 7 })
  })
})
