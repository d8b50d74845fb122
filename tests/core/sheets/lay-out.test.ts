import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { layOut } from '../../../src/core/sheets/lay-out.js'
import { faultsOf } from '../../support/sheets/judge-layout.js'
import { roofs } from '../../support/sheets/roofs.js'

describe('a roof laid out, seen by an overlay of its pieces', () => {
  it('is covered, joined under strips, patched where it is deep, and loses no area', () => {
    fc.assert(
      fc.property(roofs, ({ outline, sizes, along }) => {
        const layout = layOut(outline, sizes, along)
        expect(layout === null ? [] : faultsOf(layout)).toEqual([])
      }),
      { numRuns: 60, endOnFailure: true }
    )
  })
})
