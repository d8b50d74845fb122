import { describe, expect, it } from 'vitest'
import { builtInSheets } from '../../../src/bot/limits/index.js'
import { decide } from '../../../src/core/decide.js'
import { activities } from '../../../src/core/finding.js'
import { commonPractice, commonPracticeUs } from '../../../src/core/limits/common-practice.js'
import { limitNames } from '../../../src/core/limits/fields.js'
import { resolveSheet } from '../../../src/core/limits/resolve.js'
import { canonical } from '../../../src/core/log/canonical.js'
import { sha256 } from '../../../src/core/log/sha256.js'
import { facts, forecast, type Overrides, reading, said } from '../../support/facts.js'

const metric = resolveSheet(commonPractice)
const us = resolveSheet(commonPracticeUs)

/** Every bound of a limit, in JSON units, and a little to either side of it. */
function around(name: (typeof limitNames)[number]): number[] {
  const { min, max, cautionBelow, cautionAbove } = metric.limits[name]
  const bounds = [min, max, cautionBelow, cautionAbove].filter((bound) => bound !== null)
  return bounds.flatMap((bound) => [bound, bound - 0.001, bound + 0.001, bound - 1.3, bound + 1.3])
}

const inputs: readonly (readonly [(typeof limitNames)[number], (value: number) => Overrides])[] = [
  ['kitTemperature', (value) => ({ kit: { isoC: reading(value), resinC: reading(value) } })],
  ['airSpray', (value) => ({ airC: reading(value) })],
  ['airWeld', (value) => ({ airC: reading(value) })],
  ['airSpray', (value) => ({ airC: forecast(value, 1) })],
  ['substrate', (value) => ({ substrateC: reading(value) })],
  ['dewMarginSpray', (value) => ({ substrateDewMarginK: reading(value) })],
  ['dewMarginWeld', (value) => ({ sheetDewMarginK: reading(value) })],
  ['humidity', (value) => ({ rhPct: reading(value) })],
  ['rainChance', (value) => ({ rainChancePct: said(value) })],
  ['rainAmount', (value) => ({ rainChancePct: { ...reading(0), value: null }, rainAmountMm: forecast(value) })],
  ['windMeanSpray', (value) => ({ windKmh: reading(value) })],
  ['windMeanLay', (value) => ({ windKmh: reading(value) })],
  ['windMeanWeld', (value) => ({ windKmh: reading(value) })],
  ['windMeanPeople', (value) => ({ windKmh: reading(value) })],
  ['windGustSpray', (value) => ({ gustKmh: reading(value) })],
  ['windGustLay', (value) => ({ gustKmh: forecast(value, 2) })],
  ['daylight', (value) => ({ daylightMin: value })],
  ['heatIndex', (value) => ({ heatIndexC: reading(value) })],
  ['heatIndexNoPlan', (value) => ({ heatIndexC: reading(value) })],
  ['windChill', (value) => ({ feltC: reading(value) })],
  ['powerDrop', (value) => ({ dropPct: said(value) })]
]

describe('the metric sheet and its US twin', () => {
  it.each(inputs)('decide alike around the bounds of %s', (name, overrides) => {
    for (const value of around(name)) {
      for (const activity of activities) {
        const known = facts(overrides(value))
        const [a, b] = [decide(activity, known, metric), decide(activity, known, us)]
        expect(b.findings.map(({ rule, outcome, fix }) => [rule, outcome, fix])).toEqual(
          a.findings.map(({ rule, outcome, fix }) => [rule, outcome, fix])
        )
        b.findings.forEach(({ limit, margin }, i) => {
          expect(limit ?? 0).toBeCloseTo(a.findings[i]?.limit ?? 0, 6)
          expect(margin ?? 0).toBeCloseTo(a.findings[i]?.margin ?? 0, 6)
        })
      }
    }
  })

  it('hold the same of everything that is no limit', () => {
    const { maxAgeMin, changed, spread, sheet, strip, foam, kit, substrates, site, power } = metric
    expect(us).toMatchObject({ maxAgeMin, changed, spread, sheet, strip, foam, kit, substrates, site, power })
  })

  it('write their keys in their own units', () => {
    expect(Object.keys(commonPractice.limits)).toContain('windMeanSprayKmh')
    expect(Object.keys(commonPracticeUs.limits)).toContain('windMeanSprayMph')
    expect(commonPracticeUs.limits.kitTemperatureF).toMatchObject({ min: 69.8, max: 89.6 })
    expect(commonPracticeUs.foam).toMatchObject({
      openTime: [
        { f: 50, s: 90 },
        { f: 95, s: 30 }
      ]
    })
    expect(Object.keys(commonPracticeUs.foam)).toContain('yieldFt2PerKit')
    expect(commonPracticeUs.kit).toMatchObject({ rhoKgM3: 1100, cJKgK: 1900, kWMK: 0.18, hWM2K: 8 })
  })
})

describe('the built-in sheets', () => {
  it('are the two', () => {
    expect(builtInSheets().map(({ id, units }) => [id, units])).toEqual([
      ['common-practice', 'metric'],
      ['common-practice-us', 'us']
    ])
  })

  it('are hashed over the canonical JSON of what is kept', () => {
    for (const sheet of builtInSheets()) expect(sheet.sha256).toBe(sha256(canonical(sheet.resolved)))
    expect(metric.sha256).toBe(resolveSheet(commonPractice).sha256)
    expect(metric.sha256).not.toBe(us.sha256)
  })

  it('hash the same in any order of keys, and otherwise after any change', () => {
    const turned = Object.fromEntries(Object.entries(commonPractice).reverse()) as unknown as typeof commonPractice
    expect(resolveSheet(turned).sha256).toBe(metric.sha256)
    expect(resolveSheet({ ...commonPractice, version: 2 }).sha256).not.toBe(metric.sha256)
  })

  it('set every limit, with its basis', () => {
    expect(Object.keys(metric.limits).sort()).toEqual([...limitNames].sort())
    for (const limit of Object.values(metric.limits)) expect(limit.basis).toMatch(/^(common practice|from memory|standard: )/)
  })

  it('know the substrates that a site may have', () => {
    expect(Object.keys(metric.substrates)).toEqual(['board', 'foil', 'concrete', 'steel', 'membrane', 'plywood'])
  })

  it('throw for a sheet without a part: nobody may decide on that', () => {
    const { humidityPct: _, ...limits } = commonPractice.limits
    expect(() => resolveSheet({ ...commonPractice, limits })).toThrow('humidityPct')
    expect(() => resolveSheet({ ...commonPractice, site: { basis: 'x' } })).toThrow('site.closeUpMin')
  })
})
