import { describe, expect, it } from 'vitest'
import { stripSize, stripsFromRoll } from '../../../src/core/sheets/strip.js'

// Lengths and land: common practice, no source. The perimeter is geometry.
const strip = { widthM: 2, sheets: 1, gapMm: 6, offMm: 0, edgeMm: null, lapMm: 80, pastLapMm: 75, stripWidthMm: 150, cornerRadiusMm: 25 } as const

describe('cover strip', () => {
  it('over one inner sheet', () => {
    const size = stripSize(Object.freeze(strip))

    expect(size).toEqual({
      lengthMm: 2150,
      widthMm: 150,
      landMm: 72,
      cornerRadiusMm: 25,
      weldPerimeterMm: expect.closeTo(4557.079633, 6),
      robotMm: 4200,
      handMm: expect.closeTo(357.079633, 6)
    })
  })

  it('the outline is four straight sides and a full circle of corners', () => {
    const { lengthMm, widthMm, cornerRadiusMm: r, weldPerimeterMm } = stripSize(strip)
    expect(weldPerimeterMm).toBeCloseTo(2 * (lengthMm - 2 * r) + 2 * (widthMm - 2 * r) + 2 * Math.PI * r, 9)
  })

  it.each([
    [{ sheets: 3 }, 3 * 2000 - 2 * 80 + 150],
    [{ edgeMm: 200 }, 2000 + 75 + 200],
    [{ edgeMm: 0 }, 2075],
    [{ sheets: 2, edgeMm: 100, lapMm: 100 }, 4000 - 100 + 175]
  ])('%o is %d mm long', (change, lengthMm) => {
    expect(stripSize({ ...strip, ...change }).lengthMm).toBeCloseTo(lengthMm, 9)
  })

  it.each([
    [{ offMm: 10 }, 62],
    [{ offMm: -10 }, 62],
    [{ gapMm: 0 }, 75],
    [{ gapMm: -20 }, 85],
    [{ gapMm: 12, offMm: 31 }, 38],
    [{ gapMm: 160 }, -5]
  ])('%o leaves a land of %d mm', (change, landMm) => {
    expect(stripSize({ ...strip, ...change }).landMm).toBe(landMm)
  })

  it('with square corners is a rectangle', () => {
    expect(stripSize({ ...strip, cornerRadiusMm: 0 }).weldPerimeterMm).toBe(2 * (2150 + 150))
  })

  it.each([
    { widthM: 0 },
    { widthM: Number.NaN },
    { sheets: 0 },
    { sheets: 1.5 },
    { gapMm: Number.NaN },
    { offMm: Number.POSITIVE_INFINITY },
    { edgeMm: -1 },
    { lapMm: 2001 },
    { cornerRadiusMm: 76 }
  ])('refuses %o', (change) => {
    expect(() => stripSize({ ...strip, ...change })).toThrow(RangeError)
  })
})

describe('strips from a roll', () => {
  it.each([
    [20, 2150, 9],
    [21.5, 2150, 10],
    [2, 2150, 0],
    [0, 2150, 0]
  ])('%d m gives of %d mm: %d', (rollM, lengthMm, count) => {
    expect(stripsFromRoll(rollM, lengthMm)).toBe(count)
  })

  it('refuses nonsense', () => {
    expect(() => stripsFromRoll(20, 0)).toThrow(RangeError)
    expect(() => stripsFromRoll(Number.NaN, 2150)).toThrow(RangeError)
  })
})
