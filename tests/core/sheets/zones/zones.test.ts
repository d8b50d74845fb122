import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runFormula } from '../../../../src/core/formulas/index.js'
import { asceZones } from '../../../../src/core/sheets/zones/asce.js'
import { enOneWind, enZones } from '../../../../src/core/sheets/zones/en.js'
import { windZones, zoneStandardNames, zoneStandards } from '../../../../src/core/sheets/zones/index.js'
import { endZoneM } from '../../../../src/core/sheets/zones/nbcc.js'
import { expected, input, rowsOf, tolerance } from '../../../truth/rows.js'

const foot = 0.3048
const roof = { widthM: 24, depthM: 36, heightM: 8 }

// Rows 5c: reckoned apart from this code after the geometry of EN 1991-1-4, figure 7.6; rows 5d: a worked example of somebody else's, named in each row.
describe('one wind of EN 1991-1-4', () => {
  it.each(rowsOf('wind-zones.json', '5c'))('$id: $inputs', (row) => {
    const seen = enOneWind(input(row, 'b'), input(row, 'd'), input(row, 'h'))
    const { F, G, H, I } = seen.areasM2
    const got = {
      e: seen.eM,
      F_length: seen.fAlongM,
      strip_e10: seen.fDeepM,
      H_to: seen.hDeepM,
      areaF: F,
      areaG: G,
      areaH: H,
      areaI: I,
      sum: F + G + H + I
    }
    for (const [name, value] of Object.entries(got)) expect(Math.abs(value - expected(row, name)), name).toBeLessThanOrEqual(tolerance(row, name))
  })

  // Test values of another program: F 5 m along, 2 m deep.
  it.each(rowsOf('wind-zones.json', '5d'))('$id', (row) => {
    const { fAlongM, fDeepM } = enOneWind(input(row, 'b'), input(row, 'd'), input(row, 'h'))
    expect(fAlongM).toBeCloseTo(expected(row, 'F_length'), 2)
    expect(fDeepM).toBeCloseTo(expected(row, 'F_depth'), 2)
  })
})

// Rows 5e: reckoned apart from this code after ASCE 7, figure 30.3-2A; the rule itself is from memory.
describe('ASCE 7-22', () => {
  it.each(rowsOf('wind-zones.json', '5e'))('$id: $inputs', (row) => {
    const [L, B, h] = [input(row, 'L'), input(row, 'B'), input(row, 'h')]
    const { areasM2, widthsM } = asceZones({ widthM: L * foot, depthM: B * foot, heightM: h * foot })
    const feet2 = (name: keyof typeof areasM2) => areasM2[name] / foot ** 2
    expect(feet2('1′')).toBeCloseTo(expected(row, 'area1prime'), 1)
    expect(feet2('1')).toBeCloseTo(expected(row, 'area1'), 1)
    expect(feet2('2')).toBeCloseTo(expected(row, 'area2'), 1)
    expect(feet2('3')).toBeCloseTo(expected(row, 'area3'), 1)
    expect((widthsM['2'] ?? 0) / foot).toBeCloseTo(expected(row, 'strip06h'), 1)
    expect((widthsM['3'] ?? 0) / foot).toBeCloseTo(expected(row, 'width02h'), 1)
  })

  // Its rule, from memory: 60 ft.
  it('ends at 60 ft', () => {
    expect(windZones('asce', roof, 18.288)).toMatchObject({ kind: 'zones' })
    expect(windZones('asce', roof, 18.289)).toEqual({ kind: 'engineer', standard: 'asce', why: 'height' })
  })
})

// Rows 5f: reckoned apart from this code after the end-zone rule of NBCC, from memory.
describe('NBCC', () => {
  it.each(rowsOf('wind-zones.json', '5f'))('$id: $inputs', (row) => {
    const least = input(row, 'leastDimension')
    expect(endZoneM({ widthM: least, depthM: 2 * least, heightM: input(row, 'h') })).toBeCloseTo(expected(row, 'z'), 3)
  })

  it('has corners z × z and edges of z', () => {
    // 24 × 36 m, 8 m high: z = min(2.4, 3.2) = 2.4 by hand.
    const seen = windZones('nbcc', roof, 8)
    if (seen.kind !== 'zones') throw new Error(seen.kind)
    expect(seen.widthsM.c).toBeCloseTo(2.4, 9)
    expect(seen.areasM2.c).toBeCloseTo(4 * 2.4 ** 2, 9)
    expect(seen.areasM2.s).toBeCloseTo(2 * 2.4 * (24 + 36 - 4 * 2.4), 9)
  })

  it('is for low roofs', () => {
    expect(windZones('nbcc', { widthM: 100, depthM: 100 }, 20.1)).toMatchObject({ kind: 'engineer', why: 'height' })
    expect(windZones('nbcc', { widthM: 100, depthM: 10 }, 11)).toMatchObject({ kind: 'engineer', why: 'height' })
  })
})

/** The figure of EN once more, as a question to a point, wind by wind. */
function enAt(x: number, y: number, { widthM, depthM, heightM }: typeof roof): 'F' | 'G' | 'H' | 'I' {
  const winds = [
    { b: widthM, along: x, deep: y },
    { b: widthM, along: x, deep: depthM - y },
    { b: depthM, along: y, deep: x },
    { b: depthM, along: y, deep: widthM - x }
  ]
  const zones = winds.map(({ b, along, deep }) => {
    const e = Math.min(b, 2 * heightM)
    if (deep < e / 10) return along < e / 4 || along > b - e / 4 ? 'F' : 'G'
    return deep < e / 2 ? 'H' : 'I'
  })
  return (['F', 'G', 'H', 'I'] as const).find((zone) => zones.includes(zone)) ?? 'I'
}

describe('all winds laid over each other', () => {
  const sizes = fc.double({ min: 0.5, max: 120, noNaN: true })
  const heights = fc.double({ min: 0.5, max: 18, noNaN: true })

  it('agree with the figure at every point', () => {
    fc.assert(
      fc.property(
        sizes,
        sizes,
        heights,
        fc.double({ min: 0.001, max: 0.999 }),
        fc.double({ min: 0.001, max: 0.999 }),
        (widthM, depthM, heightM, u, v) => {
          const each = { widthM, depthM, heightM }
          const [x, y] = [u * widthM, v * depthM]
          const { parts } = enZones(each)
          const here = parts.filter(({ left, right, bottom, top }) => left < x && x < right && bottom < y && y < top)
          if (here.length === 0) return
          expect(here).toHaveLength(1)
          expect(here[0]?.zone).toBe(enAt(x, y, each))
        }
      ),
      { numRuns: 1000, seed: 1 }
    )
  })

  it('cover the roof once, by every standard', () => {
    fc.assert(
      fc.property(fc.constantFrom(...zoneStandardNames), sizes, sizes, heights, (standard, widthM, depthM, heightM) => {
        const seen = windZones(standard, { widthM, depthM }, heightM)
        if (seen.kind !== 'zones') return
        const sum = Object.values(seen.areasM2).reduce((a, b) => a + b, 0)
        expect(sum).toBeCloseTo(widthM * depthM, 6)
        expect(Object.keys(seen.areasM2).sort()).toEqual([...seen.names].sort())
        for (const { left, right, bottom, top } of seen.parts) {
          expect(left >= 0 && right <= widthM && left < right).toBe(true)
          expect(bottom >= 0 && top <= depthM && bottom < top).toBe(true)
        }
      }),
      { numRuns: 300, seed: 2 }
    )
  })

  it('do not change when the roof is turned', () => {
    for (const standard of zoneStandardNames) {
      const [a, b] = [windZones(standard, { widthM: 30, depthM: 18 }, 7), windZones(standard, { widthM: 18, depthM: 30 }, 7)]
      if (a.kind !== 'zones' || b.kind !== 'zones') throw new Error('zones')
      for (const name of a.names) expect(a.areasM2[name]).toBeCloseTo(b.areasM2[name] ?? Number.NaN, 9)
    }
  })

  it('lose the inner zones first on a small roof', () => {
    expect(enZones({ widthM: 4, depthM: 4, heightM: 10 }).areasM2.I).toBe(0)
    expect(asceZones({ widthM: 6, depthM: 6, heightM: 6 }).areasM2).toMatchObject({ '1': 0, '1′': 0 })
  })
})

describe('what nobody can draw', () => {
  it.each(zoneStandardNames)('%s: another shape is the engineer’s, a height nobody said is unknown', (standard) => {
    expect(windZones(standard, null, 8)).toEqual({ kind: 'engineer', standard, why: 'shape' })
    expect(windZones(standard, roof, null)).toEqual({ kind: 'unknown', standard, missing: 'height' })
    expect(windZones(standard, roof, 500)).toMatchObject({ kind: 'engineer', why: 'height' })
    expect(windZones(standard, roof, Number.NaN)).toMatchObject({ kind: 'engineer', why: 'height' })
  })

  it.each(zoneStandardNames)('%s refuses sizes that are none', (standard) => {
    for (const widthM of [0, -1, Number.NaN, 10_001]) expect(() => zoneStandards[standard].zones({ ...roof, widthM })).toThrow(RangeError)
    for (const heightM of [0, -1, Number.NaN, 300]) expect(() => zoneStandards[standard].zones({ ...roof, heightM })).toThrow(RangeError)
  })

  it('the formula says so', () => {
    expect(runFormula('zones', { standard: 'asce', widthM: 30, depthM: 30, heightM: 30 })).toMatchObject({
      ok: false,
      code: 'out-of-range',
      word: 'heightM'
    })
    expect(runFormula('zones', { standard: 'din', widthM: 30, depthM: 30, heightM: 5 })).toMatchObject({ ok: false, code: 'unknown-word' })
  })
})
