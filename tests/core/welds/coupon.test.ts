import { describe, expect, it } from 'vitest'
import { judgeCoupon } from '../../../src/core/welds/coupon.js'

// All of it: common practice, no source.
const keep = { temperature: 'keep', speed: 'keep', pressure: 'keep' } as const
const coupon = { widthMm: 41, peel: 'film', warm: false, minWidthMm: 38 } as const

describe('coupon', () => {
  it.each([38, 38.0000001, 37.9999999, 41])('film off the scrim, %d mm wide, passes', (widthMm) => {
    expect(judgeCoupon({ ...coupon, widthMm })).toEqual({ passed: true, cause: null, move: keep })
  })

  it('is narrow below the minimum, with the settings kept', () => {
    expect(judgeCoupon({ ...coupon, widthMm: 37.9 })).toEqual({ passed: false, cause: 'narrow', move: keep })
  })

  it.each([
    ['parted', 'cold', { ...keep, speed: 'down' }],
    ['scorched', 'hot', { ...keep, speed: 'up' }],
    ['glossy', 'hot', { ...keep, speed: 'up' }],
    ['uneven', 'uneven', { ...keep, pressure: 'up' }],
    ['wrinkled', 'uneven', { ...keep, pressure: 'up' }]
  ] as const)('%s fails as %s, narrow or not', (peel, cause, move) => {
    expect(judgeCoupon({ ...coupon, peel })).toEqual({ passed: false, cause, move })
    expect(judgeCoupon({ ...coupon, peel, widthMm: 10 })).toEqual({ passed: false, cause, move })
  })

  it.each([
    { ...coupon, warm: true },
    { ...coupon, peel: 'parted', warm: true } as const,
    { ...coupon, peel: null },
    { ...coupon, widthMm: Number.NaN },
    { ...coupon, minWidthMm: Number.NaN }
  ])('is not judged: %o', (input) => {
    expect(judgeCoupon(Object.freeze(input))).toEqual({ passed: null, cause: null, move: keep })
  })
})
