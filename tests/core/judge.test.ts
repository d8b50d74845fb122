import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Fact } from '../../src/core/fact.js'
import type { Limit } from '../../src/core/limits/sheet.js'
import type { Outcome } from '../../src/core/outcome.js'
import { interval } from '../../src/core/rules/interval.js'
import { type Fixes, judge, type Strict, stated, unknown } from '../../src/core/rules/judge.js'
import type { Unit } from '../../src/core/units.js'
import { forecast, gone, model, now, reading, said, tooOld } from '../support/facts.js'

const fixes: Fixes = { read: 'read:kit', low: 'warm:kit', high: 'cool:kit' }
const none = { min: null, max: null, cautionBelow: null, cautionAbove: null, basis: 'test' }
const kit: Limit = { ...none, unit: 'C', min: 21, max: 32, cautionBelow: 22, cautionAbove: 31 }

function outcome(fact: Fact, limit: Limit = kit, unit: Unit = 'C'): string {
  return judge(fact, unit, limit, fixes).outcome
}

describe('limit, margin and ease', () => {
  it.each([
    [25, 21, 4, 4],
    [28, 32, 4, 4],
    [21.5, 21, 0.5, 0.5],
    [20, 21, -1, -1],
    [35, 32, -3, -3]
  ])('%d °C: the nearer no-go bound %d, margin %d', (value, limit, margin, ease) => {
    expect(judge(reading(value), 'C', kit, fixes)).toMatchObject({ value, unit: 'C', limit, margin, ease })
  })

  it('is null without a no-go bound, and ease without a caution band', () => {
    expect(judge(reading(25), 'C', { ...none, unit: 'C', cautionAbove: 20 }, fixes)).toMatchObject({ limit: null, margin: null, ease: null })
    expect(judge(reading(25), 'C', { ...none, unit: 'C', min: 20 }, fixes)).toMatchObject({ limit: 20, margin: 5, ease: null })
    expect(judge(reading(25), 'C', { ...none, unit: 'C', min: 20, cautionBelow: 20 }, fixes).ease).toBeNull()
  })

  it('keeps where the value comes from', () => {
    expect(judge(reading(25, now - 60), 'C', kit, fixes)).toMatchObject({ origin: 'reading', at: now - 60, stale: false, spread: 0 })
    expect(judge(forecast(26, 1), 'C', kit, fixes)).toMatchObject({ origin: 'forecast', spread: 1 })
  })
})

describe('the scale of the sheet', () => {
  // Source: 70 °F = 21.1 °C and 90 °F = 32.2 °C, exact by the definition of the scale (NIST SP 811).
  const fahrenheit: Limit = { ...none, unit: 'F', min: 70, max: 90 }
  const celsius = (f: number) => ((f - 32) * 5) / 9

  it.each([
    [70, 'go'],
    [90, 'go'],
    [69.9999, 'no-go'],
    [90.0001, 'no-go']
  ])('%d °F typed and kept as °C: %s', (f, expected) => {
    expect(outcome(reading(celsius(f)), fahrenheit)).toBe(expected)
    expect(outcome(reading(Math.round(celsius(f) * 1e6) / 1e6), fahrenheit)).toBe(expected)
  })

  it('tells limit and margin in the unit of the value', () => {
    const verdict = judge(reading(30), 'C', fahrenheit, fixes)
    expect(verdict.limit).toBeCloseTo(32.222222, 6)
    expect(verdict.margin).toBeCloseTo(2.222222, 6)
  })

  it('compares a spread in that scale too', () => {
    expect(outcome(forecast(celsius(80), (5 / 1.645) * (5 / 9)), fahrenheit)).toBe('go')
    expect(outcome(forecast(celsius(80), (10.001 / 1.645) * (5 / 9)), fahrenheit)).toBe('unknown')
  })

  it('refuses a limit of something else: a bug, not a value', () => {
    expect(() => judge(reading(5), 'km/h', kit, fixes)).toThrow('cannot judge')
  })
})

describe('an estimate', () => {
  // 1.645: one-sided 95 % of a normal distribution (any table of the normal distribution).
  it.each([
    ['clear', 26, 1, 'go'],
    ['touching a caution from inside is still on its better side', 22 + 1.645, 1, 'go'],
    ['go and caution', 22 + 1.644, 1, 'caution'],
    ['wholly caution', 21.5, 0.1, 'caution'],
    ['touching the bound from inside', 21 + 1.645 * 0.2, 0.2, 'caution'],
    ['caution and no-go', 21.2, 0.2, 'unknown'],
    ['all three', 23, 2, 'unknown'],
    ['no-go at both ends with go between', 26.5, 8, 'unknown'],
    ['no-go on one side', 15, 2, 'no-go'],
    ['without spread it decides by its value', 21, 0, 'caution'],
    ['with a spread that is no number it never goes', 26, Number.NaN, 'unknown'],
    ['with a negative spread neither', 26, -1, 'unknown'],
    ['with an endless one neither', 26, Number.POSITIVE_INFINITY, 'unknown']
  ])('%s', (_, value, spread, expected) => {
    expect(outcome(forecast(value, spread))).toBe(expected)
    expect(outcome(model(value, spread))).toBe(expected)
  })

  it('is not what a person read, spread or not', () => {
    expect(outcome({ ...reading(21), spread: 5 })).toBe('caution')
    expect(outcome({ ...said(21), spread: 5 })).toBe('caution')
  })

  it('mixes anything unknown into unknown', () => {
    expect(interval(1, 1, [], (point) => (point < 1 ? 'unknown' : 'go'))).toBe('unknown')
    expect(interval(1, 1, [], (point) => (point < 1 ? 'unknown' : 'no-go'))).toBe('unknown')
    expect(interval(1, 1, [], () => 'unknown')).toBe('unknown')
  })
})

describe('the bands of a limit', () => {
  const bound = fc.constantFrom(null, 20, 20.0000004, 21.5)
  const sides = fc.tuple(bound, bound, bound, bound).map(([a, b, c, d]): Limit => {
    const [min, cautionBelow] = a !== null && b !== null && a > b ? [b, a] : [a, b]
    const [cautionAbove, max] = c !== null && d !== null && c > d ? [d, c] : [c, d]
    return {
      ...none,
      unit: 'C',
      min,
      cautionBelow,
      cautionAbove: cautionAbove === null ? null : cautionAbove + 3,
      max: max === null ? null : max + 3
    }
  })
  const value = fc.oneof(fc.double({ min: 18, max: 27, noNaN: true }), fc.constantFrom(20, 21.5, 23, 24.5, 20.0000005, 22.9999996))
  const six = (number: number) => Math.round(number * 1e6) / 1e6

  /** By the definition alone (outside contract §2): each point against each bound, both rounded to 6 decimals. */
  function bandOf(point: number, { min, max, cautionBelow, cautionAbove }: Limit, strict: Strict): Outcome {
    const inside = (by: number, hard: boolean) => (hard ? by > 0 : by >= 0)
    const within = (low: number | null, high: number | null, hard: boolean) =>
      (low === null || inside(six(point) - six(low), hard)) && (high === null || inside(six(high) - six(point), hard))
    if (!within(min, max, strict !== 'none')) return 'no-go'
    return within(cautionBelow, cautionAbove, strict === 'all') ? 'go' : 'caution'
  }

  function byDefinition(at: number, spread: number, limit: Limit, strict: Strict): Outcome {
    const [low, high] = [at - 1.645 * spread, at + 1.645 * spread]
    const between = [limit.min, limit.max, limit.cautionBelow, limit.cautionAbove].filter((each) => each !== null && each > low && each < high)
    const all = new Set([low, high, ...between].map((point) => bandOf(point as number, limit, strict)))
    if (all.size === 1) return [...all][0] as Outcome
    return all.has('no-go') ? 'unknown' : 'caution'
  }

  it('are judged as they are defined, on a bound, next to it and across it', () => {
    const spread = fc.oneof(fc.constantFrom(0, 1e-7, 3e-7), fc.double({ min: 0, max: 4, noNaN: true }))
    fc.assert(
      fc.property(value, spread, sides, fc.constantFrom<Strict>('none', 'no-go', 'all'), (at, wide, limit, strict) => {
        expect(judge(forecast(at, wide), 'C', limit, fixes, strict).outcome).toBe(byDefinition(at, wide, limit, strict))
        expect(judge(reading(at), 'C', limit, fixes, strict).outcome).toBe(bandOf(at, limit, strict))
      }),
      { numRuns: 3000, seed: 5 }
    )
  })
})

describe('what is missing', () => {
  it.each([
    ['null', gone],
    ['too old', tooOld],
    ['not a number', reading(Number.NaN)],
    ['endless', reading(Number.POSITIVE_INFINITY)]
  ])('%s is unknown', (_, fact) => {
    expect(judge(fact, 'C', kit, fixes)).toMatchObject({
      outcome: 'unknown',
      value: null,
      limit: null,
      margin: null,
      ease: null,
      fix: 'read:kit',
      stale: fact.stale
    })
  })
})

describe('fixes', () => {
  const caution: Fixes = { ...fixes, caution: 'mix:kit' }

  it.each([
    [20, 'warm:kit'],
    [21.5, 'warm:kit'],
    [31.5, 'cool:kit'],
    [33, 'cool:kit'],
    [25, null]
  ])('%d °C: %s', (value, fix) => {
    expect(judge(reading(value), 'C', kit, fixes).fix).toBe(fix)
  })

  it('looks at the nearer side where only the spread reaches over', () => {
    expect(judge(forecast(22.5, 0.5), 'C', kit, fixes)).toMatchObject({ outcome: 'caution', fix: 'warm:kit' })
    expect(judge(forecast(30.5, 0.5), 'C', kit, fixes)).toMatchObject({ outcome: 'caution', fix: 'cool:kit' })
  })

  it('has another one for a caution where the rule says so', () => {
    expect(judge(reading(21.5), 'C', kit, caution).fix).toBe('mix:kit')
    expect(judge(reading(20), 'C', kit, caution).fix).toBe('warm:kit')
  })
})

describe('strict bounds', () => {
  it.each([
    ['none', 32, 'caution'],
    ['none', 31, 'go'],
    ['no-go', 32, 'no-go'],
    ['no-go', 31, 'go'],
    ['all', 32, 'no-go'],
    ['all', 31, 'caution'],
    ['all', 30.999999, 'go'],
    ['all', 22, 'caution'],
    ['all', 21, 'no-go']
  ] as const)('%s: %d °C is %s', (strict, value, expected) => {
    expect(judge(reading(value), 'C', kit, fixes, strict).outcome).toBe(expected)
  })
})

describe('statements', () => {
  it('have neither limit nor margin, and nothing to do when all is well', () => {
    expect(stated('go', true, said(true), 'dry:seam')).toMatchObject({ value: true, limit: null, margin: null, ease: null, fix: null, unit: null })
    expect(stated('no-go', false, said(false), 'dry:seam').fix).toBe('dry:seam')
    expect(unknown(tooOld, null, 'state:dry')).toMatchObject({ outcome: 'unknown', value: null, stale: true, fix: 'state:dry' })
  })
})
