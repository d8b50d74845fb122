import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { VoidCause } from '../../../src/core/log/data.js'
import { coldWaitMin, waitUntil } from '../../../src/core/welds/cold-wait.js'
import { mendOf } from '../../../src/core/welds/mend.js'

/** Rows of outside contract: design page §8 (char, a second failure, more than 150 mm → patch, void + 75 mm all round); lengths from memory. */
describe('how a void is mended', () => {
  it.each<[string, number, readonly VoidCause[], number, object]>([
    ['a short one is welded again', 40, [], 0, { how: 'weld', why: null, patchMm: null, probeMm: 140 }],
    ['150 mm is still welded', 150, ['cold'], 0, { how: 'weld', patchMm: null, probeMm: 250 }],
    ['more than 150 mm is patched', 150.1, [], 0, { how: 'patch', why: 'long', patchMm: 300.1 }],
    ['char is patched', 40, ['scorched'], 0, { how: 'patch', why: 'char', patchMm: 190 }],
    ['a second failure is patched', 40, ['wet'], 1, { how: 'patch', why: 'failed', patchMm: 190 }],
    ['foam cured in the lap is cut out', 40, ['foam', 'scorched'], 2, { how: 'cut-and-patch', why: 'foam', patchMm: 190 }]
  ])('%s', (_name, lengthMm, causes, failures, mend) => {
    expect(mendOf({ lengthMm, causes }, failures)).toMatchObject(mend)
  })

  it('covers all of the void and what is probed with a patch that is longer', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10_000, noNaN: true }), fc.integer({ min: 0, max: 5 }), (lengthMm, failures) => {
        const { how, patchMm, probeMm } = mendOf({ lengthMm, causes: [] }, failures)
        expect(patchMm === null).toBe(how === 'weld')
        expect(probeMm).toBeGreaterThan(lengthMm)
        if (patchMm !== null) expect(patchMm).toBeGreaterThan(probeMm)
      })
    )
  })
})

describe('waiting until a weld is cold', () => {
  it.each([
    ['nothing welded', null, 1000, null],
    ['just now', 1000, 1000, 1000 + coldWaitMin * 60],
    ['a second before', 1000, 999 + coldWaitMin * 60, 1000 + coldWaitMin * 60],
    ['on the bound', 1000, 1000 + coldWaitMin * 60, null],
    ['a weld that a clock put ahead', 2000, 1000, null]
  ] as const)('%s', (_name, weldedAt, now, until) => {
    expect(waitUntil(weldedAt, now)).toBe(until)
  })
})
