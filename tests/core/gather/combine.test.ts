import { describe, expect, it } from 'vitest'
import { combine, together } from '../../../src/core/gather/combine.js'
import { forecast, gone, now, reading, tooOld } from '../../support/facts.js'

describe('combine', () => {
  it('carries independent spreads through by central differences', () => {
    // σ² = (∂f/∂a σa)² + (∂f/∂b σb)², JCGM 100:2008 (GUM) eq. 10: f = 3a − 4b.
    expect(combine(forecast(10, 1), forecast(2, 1), (a, b) => 3 * a - 4 * b)).toMatchObject({ value: 22, spread: 5 })
    expect(combine(forecast(10, 2), reading(2), (a, b) => a - b)).toMatchObject({ value: 8, spread: 2, origin: 'forecast' })
    expect(combine(reading(10), reading(2), (a, b) => a - b)).toMatchObject({ value: 8, spread: 0, origin: 'reading' })
  })

  it('is missing where one is missing or outside the range of the function, stale where one is', () => {
    expect(combine(gone, reading(2), (a, b) => a - b)).toMatchObject({ value: null, origin: null, stale: false })
    expect(combine(tooOld, reading(2), (a, b) => a - b)).toMatchObject({ value: null, stale: true })
    expect(combine(reading(1), reading(2), () => null)).toMatchObject({ value: null })
  })

  it('takes no spread where the function ends', () => {
    expect(combine(forecast(1, 5), reading(0), (a) => (a < 0 ? null : a))).toMatchObject({ value: 1, spread: 0 })
  })
})

describe('together', () => {
  it('is an estimate as soon as one is, and as old as the older', () => {
    expect(together(reading(1, now - 60), forecast(2))).toEqual({ origin: 'forecast', at: now - 60, stale: false })
    expect(together(forecast(2), reading(1, now - 60))).toEqual({ origin: 'forecast', at: now - 60, stale: false })
    expect(together(reading(1), gone)).toMatchObject({ at: now })
  })
})
