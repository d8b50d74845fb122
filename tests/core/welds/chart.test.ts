import jstat from 'jstat'
import { describe, expect, it } from 'vitest'
import { chanceShort, individualsChart } from '../../../src/core/welds/chart.js'
import { readTruth } from '../../truth/rows.js'

interface Truth {
  readonly individuals: { values: number[]; mean: number; low: number; high: number; tolerance: number; source: string }
  readonly normal: { points: [number, number][]; tolerance: number; source: string }
}

const { individuals, normal } = readTruth('statistics.json') as Truth

describe('individuals chart', () => {
  it('has the mean of jstat 1.9, and its mean moving range over 1.128', () => {
    for (const widths of [individuals.values, [41, 40, 42, 41.5, 39], [38, 44]]) {
      const { meanMm, sigmaMm } = individualsChart(widths)
      expect(meanMm).toBeCloseTo(jstat.mean(widths), 10)
      expect(sigmaMm).toBeCloseTo(jstat.mean(jstat.diff(widths).map(Math.abs)) / 1.128, 10)
    }
  })

  it('gives the limits of the handbook example', () => {
    const chart = individualsChart(Object.freeze(individuals.values))

    for (const [ours, theirs] of [
      [chart.meanMm, individuals.mean],
      [chart.lowMm, individuals.low],
      [chart.highMm, individuals.high]
    ] as const) {
      expect(Math.abs((ours ?? Number.NaN) - theirs), individuals.source).toBeLessThanOrEqual(individuals.tolerance)
    }
  })

  it('has no sigma for one width, nothing for none, no spread for equal ones', () => {
    expect(individualsChart([41])).toEqual({ meanMm: 41, sigmaMm: null, lowMm: null, highMm: null })
    expect(individualsChart([])).toEqual({ meanMm: null, sigmaMm: null, lowMm: null, highMm: null })
    expect(individualsChart([40, Number.NaN])).toEqual({ meanMm: null, sigmaMm: null, lowMm: null, highMm: null })
    expect(individualsChart([40, 40, 40])).toEqual({ meanMm: 40, sigmaMm: 0, lowMm: 40, highMm: 40 })
  })
})

describe('chance that the next is short', () => {
  it('is that of jstat 1.9 (a statistics library) over the whole range of chances that anybody acts on', () => {
    for (let z = -7; z <= 7; z += 0.05) {
      const ours = chanceShort(40, 1.5, 40 + 1.5 * z) ?? Number.NaN
      expect(Math.abs(ours - jstat.normal.cdf(40 + 1.5 * z, 40, 1.5)), `z ${z}`).toBeLessThan(1e-7)
    }
  })

  it.each(normal.points)('is the normal distribution: %d sigma, %d', (z, chance) => {
    expect(Math.abs((chanceShort(38 - 2 * z, 2, 38) ?? Number.NaN) - chance), normal.source).toBeLessThanOrEqual(normal.tolerance)
  })

  it('is symmetric, rises with the minimum, and ends at 0 and 1', () => {
    let last = 0
    for (let min = 0; min <= 80; min += 0.5) {
      const chance = chanceShort(40, 2, min) ?? Number.NaN
      expect(chance).toBeGreaterThanOrEqual(last)
      expect(chance + (chanceShort(40, 2, 80 - min) ?? Number.NaN)).toBeCloseTo(1, 12)
      last = chance
    }
    expect(chanceShort(40, 2, 0)).toBe(0)
    expect(last).toBe(1)
  })

  it('without spread is certain', () => {
    expect(chanceShort(38, 0, 38)).toBe(0)
    expect(chanceShort(37.9, 0, 38)).toBe(1)
  })

  it.each([
    [null, 1, 38],
    [40, null, 38],
    [Number.NaN, 1, 38],
    [40, Number.NaN, 38],
    [40, -1, 38],
    [40, 1, Number.NaN]
  ])('is not known for %s, %s, %s', (mean, sigma, min) => {
    expect(chanceShort(mean, sigma, min)).toBeNull()
  })
})
