import { describe, expect, it } from 'vitest'
import { commonPractice } from '../../../src/core/limits/common-practice.js'
import { resolveSheet } from '../../../src/core/limits/resolve.js'
import { fastenersOnLeg } from '../../../src/core/sheets/fasteners.js'
import { remaining } from '../../../src/core/sheets/remaining.js'
import { stagingOutcome } from '../../../src/core/sheets/takeoff/staging.js'
import { type Takeoff, type TakeoffLine, takeoff } from '../../../src/core/sheets/takeoff.js'
import { windZones } from '../../../src/core/sheets/zones/index.js'
import { bareLayout, box, strip } from '../../support/layouts.js'

const base = resolveSheet(commonPractice)
const sheet = {
  ...base,
  foam: { ...base.foam, yieldM2PerKit: 90, nozzlesPerKit: 10 },
  takeoff: {
    ...{ bareBackRollM: 20, foamFieldPct: 100, foamPerimeterPct: 150, foamCornerPct: 200, foamWastePct: 10, cleanerMPerL: 60, cleanerCanL: 5 },
    ...{ fastenerMm: 300, fastenersPerBox: 250, barM: 3, sheetKgM2: 2, kitKg: 70, stagingM2: 10 }
  }
}
const outline = { outer: box(0, 0, 24_000, 36_000), holes: [box(5000, 9000, 7000, 10_200).toReversed()] }
const areaMm2 = (24 * 36 - 2 * 1.2) * 1e6
const rolls = Array.from({ length: 24 }, (_, index) => ({ number: index + 1, cuts: [], leftMm: 0 }))
const seams = [{ course: 2, from: [0, 0] as const, to: [24_000, 0] as const }]
const strips = Array.from({ length: 13 }, (_, index) => strip(index + 1, 2150))
const layout = bareLayout(outline, areaMm2, { rolls, seams, strips })
const zones = windZones('nbcc', { widthM: 24, depthM: 36 }, 8)

/** Every sum again, apart from the code: factors from the left, parts added, waste on top. */
function again({ sum, wastePct }: TakeoffLine): number {
  let total = 0
  for (const { factors } of sum) {
    let part = Number.NaN
    for (const { by, value, unit } of factors) {
      const plain = unit === '%' ? value / 100 : value
      part = by === '' ? plain : by === '×' ? part * plain : part / plain
    }
    total += part
  }
  return total * (1 + wastePct / 100)
}

function checkSums(seen: Takeoff): void {
  for (const line of Object.values(seen)) {
    const total = again(line)
    expect(line.value, line.item).toBeGreaterThanOrEqual(total - 1e-9)
    if (line.item !== 'bareBack') expect(line.value - total, line.item).toBeLessThan(line.whole ? 1 : 1e-9)
    if (line.sale !== null) {
      expect(line.sale.packs * line.sale.of, line.item).toBeGreaterThanOrEqual(line.value)
      expect((line.sale.packs - 1) * line.sale.of, line.item).toBeLessThan(Math.max(1, line.value))
    }
  }
}

// Common practice, no source; every figure by hand.
describe('a takeoff', () => {
  const seen = takeoff(layout, zones, sheet)

  it('shows sums that come out', () => {
    checkSums(seen)
    checkSums(takeoff(layout, null, sheet))
  })

  it('counts rolls and strips as they are cut: nine of 2.15 m from 20 m', () => {
    expect(seen.rolls.value).toBe(24)
    expect(seen.bareBack).toMatchObject({ value: 2, bound: 2, sale: { packs: 2, of: 1 } })
    const long = bareLayout(outline, areaMm2, { strips: [strip(1, 45_000)] })
    expect(takeoff(long, null, sheet).bareBack).toMatchObject({ value: 3, bound: 3 })
  })

  it('kits by zone and pattern: c 23.04, s 241.92, r 599.04 of 864 m², openings shared', () => {
    const share = 861.6 / 864
    const kits = (((23.04 * 2 + 241.92 * 1.5 + 599.04) * share) / 90) * 1.1
    expect(seen.kits.value).toBe(Math.ceil(kits))
    expect(seen.kits.sum.map(({ name }) => name)).toEqual(['c', 's', 'r'])
    expect(again(seen.kits)).toBeCloseTo(kits, 9)
    expect(seen.nozzles.value).toBe(Math.ceil(kits) * 10)
  })

  it('the whole roof by the field where nobody knows the zones', () => {
    const bare = takeoff(layout, windZones('en', null, 8), sheet)
    expect(bare.kits.sum).toHaveLength(1)
    expect(bare.kits.value).toBe(Math.ceil((861.6 / 90) * 1.1))
  })

  it('fasteners on every leg, bars along all of them', () => {
    const legs = [24, 36, 24, 36, 2, 1.2, 2, 1.2]
    const counts = legs.map((lengthM) => Math.ceil((lengthM * 1000 - 300) / 300 - 1e-9) + 1)
    const all = counts.reduce((a, b) => a + b, 0)
    expect(counts).toEqual(legs.map((lengthM) => fastenersOnLeg(lengthM, 300, 150)))
    expect(seen.fasteners).toMatchObject({ value: all, sale: { packs: Math.ceil(all / 250), of: 250 } })
    expect(seen.fasteners.sum.map(({ name }) => name)).toEqual(['0 24.000', '0 36.000', '1 2.000', '1 1.200'])
    expect(seen.bars.value).toBe(Math.ceil(126.4 / 3))
  })

  it('does not part a leg at a corner on a straight line', () => {
    const split = { ...outline, outer: [...outline.outer.slice(0, 1), [12_000, 0] as const, ...outline.outer.slice(1)] }
    expect(takeoff(bareLayout(split, areaMm2), null, sheet).fasteners.value).toBe(seen.fasteners.value)
  })

  it('cleaner by all that is welded', () => {
    expect(seen.cleaner).toMatchObject({ value: Math.ceil((24 + 13 * 4.6) / 60), unit: 'l', sale: { packs: 1, of: 5, unit: 'l' } })
  })

  it('weight and load: 24 rolls of 40 m², kits of 70 kg, on 10 m²', () => {
    const kg = 24 * 40 * 2 + seen.kits.value * 70
    expect(seen.weight.value).toBeCloseTo(kg, 9)
    expect(seen.pressure.value).toBeCloseTo((kg * 9.80665) / 10 / 1000, 9)
  })

  it('against the engineer’s limit: unknown while nobody said it', () => {
    expect(stagingOutcome(2, null)).toBe('unknown')
    expect(stagingOutcome(2, 2)).toBe('go')
    expect(stagingOutcome(2.01, 2)).toBe('no-go')
    expect(stagingOutcome(Number.NaN, 2)).toBe('no-go')
  })

  it('nothing laid out is nothing to cut', () => {
    const bare = takeoff(bareLayout(outline, areaMm2), null, sheet)
    expect(bare).toMatchObject({ rolls: { value: 0 }, bareBack: { value: 0, bound: 0 }, patches: { value: 0 }, cleaner: { value: 0 } })
  })
})

describe('what remains', () => {
  const all = takeoff(layout, zones, sheet)
  const of = (laidM2: number) => Object.fromEntries(remaining(all, 861.6, laidM2).map(({ item, value }) => [item, value]))

  it('is all of it before, nothing after, and a whole piece between', () => {
    expect(of(0)).toMatchObject({ rolls: 24, kits: all.kits.value, bareBack: 2 })
    expect(of(861.6)).toEqual({ rolls: 0, bareBack: 0, kits: 0, nozzles: 0, patches: 0, cleaner: 0 })
    expect(of(900)).toEqual(of(861.6))
    expect(of(430.8)).toMatchObject({ rolls: 12, bareBack: 1 })
    expect(of(431)).toMatchObject({ rolls: 12 })
    expect(of(430)).toMatchObject({ rolls: 13 })
  })

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('refuses %d m² laid', (laidM2) => {
    expect(() => remaining(all, 100, laidM2)).toThrow(RangeError)
    expect(() => remaining(all, 0, 1)).toThrow(RangeError)
  })
})
