import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { byBinding, decide, outcomeOf, weatherFindings } from '../../src/core/decide.js'
import { type Activity, activities } from '../../src/core/finding.js'
import { rank, worst } from '../../src/core/outcome.js'
import { rules } from '../../src/core/rules/index.js'
import { facts, forecast, goFacts, gone, model, noFacts, now, type Overrides, reading, said, sheet } from '../support/facts.js'

const common = sheet()
const ruleOf = (activity: Activity, overrides: Overrides) => decide(activity, facts(overrides), common).findings.map(({ rule }) => rule)

describe('a day on which everything is go', () => {
  it.each(activities)('%s goes', (activity) => {
    const decision = decide(activity, goFacts(), common)
    expect(decision).toMatchObject({ activity, outcome: 'go', conditions: 'go', checklist: 'go', people: 'go' })
    expect(decision.findings.every(({ outcome, fix }) => outcome === 'go' && fix === null)).toBe(true)
  })
})

describe('nothing known, at night', () => {
  it.each(['spray', 'lay', 'weld'] as const)('%s: no daylight, and everything else to be read or stated', (activity) => {
    const decision = decide(activity, noFacts(), common)
    expect(decision.findings[0]).toMatchObject({ rule: 'daylight', outcome: 'no-go' })
    expect(decision.findings.slice(1).every(({ outcome, fix }) => outcome === 'unknown' && fix !== null)).toBe(true)
  })

  it('is never go by day either', () => {
    expect(decide('spray', { ...noFacts(), sunUp: true, daylightMin: 300 }, common).outcome).toBe('unknown')
  })
})

describe('which rules judge what', () => {
  // Source: the table of rules that this program publishes.
  it.each([
    [
      'spray',
      [
        'kit-temperature',
        'air-temperature',
        'substrate-temperature',
        'dew-margin',
        'humidity',
        'rain-now',
        'rain-coming',
        'wind-mean',
        'wind-gust',
        'daylight',
        'substrate-dry',
        'fleece-dry',
        'substrate-clean',
        'compatibility',
        'intakes',
        'deck-moisture',
        'sheet-relaxed',
        'kit-mixed',
        'adhesive-date',
        'start-up'
      ]
    ],
    ['lay', ['rain-now', 'rain-coming', 'wind-mean', 'wind-gust', 'daylight']],
    [
      'weld',
      [
        'air-temperature',
        'dew-margin',
        'rain-now',
        'wind-mean',
        'daylight',
        'seam-dry',
        'lap-clean',
        'compatibility',
        'coupon',
        'power',
        'traffic-wait'
      ]
    ],
    ['people', ['wind-mean', 'wind-gust', 'thunder', 'heat', 'cold', 'ice']]
  ] as const)('%s', (activity, expected) => {
    const wet = facts({ substrateKind: 'concrete', deckMoisture: gone, laidAt: now })
    const found = decide(activity, wet, common).findings.filter((finding) => finding.activity === activity)
    expect(found.map(({ rule }) => rule).sort()).toEqual([...expected].sort())
  })

  it('keeps the people beside every activity, once', () => {
    for (const activity of ['spray', 'lay', 'weld'] as const) {
      const people = decide(activity, goFacts(), common).findings.filter(({ group }) => group === 'people')
      expect(people.map(({ rule, activity: of }) => `${of} ${rule}`).sort()).toEqual([
        'people cold',
        'people heat',
        'people ice',
        'people thunder',
        'people wind-gust',
        'people wind-mean'
      ])
    }
  })

  it('has every rule judge something, with a source', () => {
    for (const rule of Object.values(rules)) {
      expect(Object.keys(rule.judges).length).toBeGreaterThan(0)
      expect(rule.source).not.toBe('')
    }
  })
})

describe('the outcome of an activity', () => {
  it.each([
    ['a condition', { airC: reading(4) }, 'no-go'],
    ['the checklist', { intakes: said('shut') }, 'caution'],
    ['something missing beats a caution', { intakes: said('shut'), rhPct: gone }, 'unknown'],
    ['a no-go beats something missing', { airC: reading(4), rhPct: gone }, 'no-go'],
    ['people caution is shown beside it', { feltC: reading(-12) }, 'go'],
    ['people unknown too', { heatIndexC: gone }, 'go'],
    ['people no-go makes it no-go', { thunderHeardAt: now }, 'no-go']
  ] satisfies [string, Overrides, string][])('%s', (_, overrides, outcome) => {
    expect(decide('spray', facts(overrides), common).outcome).toBe(outcome)
  })

  it('is for people their own', () => {
    expect(decide('people', facts({ feltC: reading(-12) }), common)).toMatchObject({ outcome: 'caution', people: 'caution', conditions: 'go' })
  })

  it('parts conditions, checklist and people', () => {
    const decision = decide('spray', facts({ windKmh: reading(20), substrateDry: gone, feltC: reading(-12) }), common)
    expect(decision).toMatchObject({ outcome: 'unknown', conditions: 'caution', checklist: 'unknown', people: 'caution' })
  })

  it('rain coming stops spraying and laying, never welding', () => {
    const rain = facts({ rainChancePct: said(90) })
    expect([decide('spray', rain, common).outcome, decide('lay', rain, common).outcome, decide('weld', rain, common).outcome]).toEqual([
      'no-go',
      'no-go',
      'go'
    ])
  })
})

describe('the order of findings', () => {
  it('is no-go, unknown, caution, go', () => {
    const order = ruleOf('spray', { airC: reading(4), rhPct: gone, windKmh: reading(20) })
    expect(order.slice(0, 3)).toEqual(['air-temperature', 'humidity', 'wind-mean'])
  })

  it('is then margin ÷ caution band, null first', () => {
    // Caution: gust 3 of 10 km/h left, wind 4 of 10, intakes without a margin.
    const order = ruleOf('spray', { windKmh: reading(21), gustKmh: reading(32), intakes: said('shut') })
    expect(order.slice(0, 3)).toEqual(['intakes', 'wind-gust', 'wind-mean'])
  })

  it('is then the rule', () => {
    const order = ruleOf('spray', { fleeceDry: said('wet'), substrateDry: said('wet'), substrateClean: said(false), compatibility: said('contact') })
    expect(order.slice(0, 4)).toEqual(['compatibility', 'fleece-dry', 'substrate-clean', 'substrate-dry'])
  })

  const fact = fc.oneof(
    fc.constant(gone),
    fc.double({ min: -40, max: 70, noNaN: true }).map((value) => reading(value)),
    fc
      .tuple(fc.double({ min: -40, max: 70, noNaN: true }), fc.double({ min: 0, max: 10, noNaN: true }))
      .map(([value, spread]) => model(value, spread))
  )
  const day = fc.record({
    airC: fact,
    rhPct: fact,
    substrateC: fact,
    sheetC: fact,
    substrateDewMarginK: fact,
    sheetDewMarginK: fact,
    windKmh: fact,
    gustKmh: fact,
    heatIndexC: fact,
    feltC: fact,
    rainChancePct: fact,
    dropPct: fact,
    rainFalling: fc.constantFrom(gone, said(true), forecast(false)),
    intakes: fc.constantFrom(gone, said('open' as const), said('shut' as const)),
    surfaceWet: fc.constantFrom(gone, said(true), said(false))
  })

  it('agrees with byBinding, and outcomes with the findings, whatever is known', () => {
    fc.assert(
      fc.property(day, fc.constantFrom(...activities), (overrides, activity) => {
        const decision = decide(activity, facts(overrides), common)
        const { findings } = decision
        expect(outcomeOf(activity, facts(overrides), common)).toBe(decision.outcome)
        const shared = weatherFindings(activity, facts(overrides), common)
        expect(shared).toEqual(findings.filter(({ group }) => group !== 'checklist'))
        expect(findings).toEqual([...findings].sort(byBinding))
        for (const group of ['conditions', 'checklist', 'people'] as const) {
          expect(decision[group]).toBe(worst(findings.filter((finding) => finding.group === group).map(({ outcome }) => outcome)))
        }
        for (const { outcome, fix, value } of findings) {
          if (outcome === 'go') expect(fix).toBeNull()
          if (rank[outcome] === rank.unknown) expect(fix).not.toBeNull()
          expect(value === null || typeof value === 'boolean' || Number.isFinite(value)).toBe(true)
        }
      }),
      { numRuns: 500, seed: 3 }
    )
  })

  it('never turns better when something known goes missing', () => {
    fc.assert(
      fc.property(day, fc.constantFrom('airC', 'rhPct', 'substrateDewMarginK', 'windKmh', 'gustKmh'), (overrides, key) => {
        const known = decide('spray', facts(overrides), common)
        const without = decide('spray', facts({ ...overrides, [key]: gone }), common)
        if (without.outcome === 'go') expect(known.outcome).not.toBe('unknown')
        expect(known.outcome === 'go' && without.outcome === 'go').toBe(false)
      }),
      { numRuns: 300, seed: 4 }
    )
  })

  it('is the same each time', () => {
    const some = facts({ airC: forecast(6, 1.5), intakes: gone })
    expect(decide('spray', some, common)).toEqual(decide('spray', some, common))
  })
})
