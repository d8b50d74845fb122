import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { faultOf, wildFaultOf } from '../../support/messages/judge.js'
import { anyText, badlyTyped, wellFormed } from '../../support/messages/messages.js'

/** A seeded slice of `npm run campaign -- messages`. */
const slice = { numRuns: 1500 }

describe('generated messages', () => {
  it('of the trade are understood, every number in its unit', () => {
    fc.assert(
      fc.property(wellFormed, (message) => {
        expect(faultOf(message)).toBeNull()
      }),
      slice
    )
  })

  it('badly typed are refused, or read as what stands there', () => {
    fc.assert(
      fc.property(badlyTyped, (message) => {
        expect(wildFaultOf(message)).toBeNull()
      }),
      slice
    )
  })

  it('of anything at all are refused, or read as what stands there', () => {
    fc.assert(
      fc.property(anyText, (message) => {
        expect(wildFaultOf(message)).toBeNull()
      }),
      slice
    )
  })
})
