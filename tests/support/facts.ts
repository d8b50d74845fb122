import type { Fact } from '../../src/core/fact.js'
import type { Facts } from '../../src/core/facts.js'
import type { Activity, Verdict } from '../../src/core/finding.js'
import { commonPractice } from '../../src/core/limits/common-practice.js'
import type { LimitName } from '../../src/core/limits/names.js'
import { resolveSheet } from '../../src/core/limits/resolve.js'
import type { Limit, LimitsSheet } from '../../src/core/limits/sheet.js'
import type { Rule } from '../../src/core/rules/rule.js'

/** 2026-05-04T10:00:00Z, a Monday: the now of every built fact. */
export const now = 1777888800

/** A person's reading, taken now. */
export function reading<T>(value: T, at: number = now): Fact<T> {
  return { value, at, origin: 'reading', spread: 0, stale: false }
}

/** What a person stated, some minutes ago. */
export function said<T>(value: T, minutesAgo = 0): Fact<T> {
  return { value, at: now - 60 * minutesAgo, origin: 'statement', spread: 0, stale: false }
}

/** An estimate with one standard deviation `spread`. */
export function forecast<T>(value: T, spread = 0): Fact<T> {
  return { value, at: now, origin: 'forecast', spread, stale: false }
}

export function model(value: number, spread = 0): Fact {
  return { value, at: now, origin: 'model', spread, stale: false }
}

/** Known to be missing. */
export const gone: Fact<never> = { value: null, at: null, origin: null, spread: 0, stale: false }
/** There was one, but it is too old to use. */
export const tooOld: Fact<never> = { value: null, at: now - 7200, origin: null, spread: 0, stale: true }

/** Everything read or stated, everything go, by day, for every activity. */
export function goFacts(): Facts {
  return {
    at: now,
    today: '2026-05-04',
    airC: reading(20),
    rhPct: reading(50),
    dewPointC: reading(9.3),
    substrateC: reading(20),
    sheetC: reading(20),
    substrateDewMarginK: reading(10.7),
    sheetDewMarginK: reading(10.7),
    windKmh: reading(10),
    gustKmh: reading(15),
    cloudPct: forecast(40),
    heatIndexC: reading(19.4),
    feltC: reading(20),
    wbgtC: gone,
    rainFalling: said(false),
    rainChancePct: said(10),
    rainAmountMm: gone,
    sunUp: true,
    daylightMin: 400,
    substrateDry: said('dry'),
    fleeceDry: said('dry'),
    seamDry: said('dry'),
    substrateClean: said(true),
    lapClean: said(true),
    compatibility: said('compatible'),
    intakes: said('none'),
    substrateKind: 'board',
    deckMoisture: gone,
    sheetState: said('relaxed'),
    kit: {
      name: 'K1',
      isoC: reading(25),
      resinC: reading(25),
      unmixed: false,
      mixed: said(true),
      expiresOn: said('2099-01-01'),
      daysLeft: 26540
    },
    startUp: { tight: said(true), purged: said(true), nozzle: said(true), tested: said(true) },
    welders: [{ name: 'robot', status: 'cleared', lapsedBy: null, widthMm: 41, at: now - 3600 }],
    dropPct: said(2),
    powerMeasured: false,
    laidAt: null,
    thumbTest: false,
    thunderHeardAt: null,
    noThunder: said(true),
    thunderThisHour: false,
    thunderWithin2h: false,
    surfaceWet: said(false)
  }
}

/** All go but for what is said here; `kit` and `startUp` may be told in part. */
export type Overrides = Partial<Omit<Facts, 'kit' | 'startUp'>> & {
  readonly kit?: Partial<Facts['kit']>
  readonly startUp?: Partial<Facts['startUp']>
}

export function facts(overrides: Overrides = {}): Facts {
  const base = goFacts()
  return { ...base, ...overrides, kit: { ...base.kit, ...overrides.kit }, startUp: { ...base.startUp, ...overrides.startUp } }
}

/** Nothing known at all, at night. */
export function noFacts(): Facts {
  const numbers = [
    'airC',
    'rhPct',
    'dewPointC',
    'substrateC',
    'sheetC',
    'substrateDewMarginK',
    'sheetDewMarginK',
    'windKmh',
    'gustKmh',
    'cloudPct',
    'heatIndexC',
    'feltC',
    'wbgtC',
    'rainFalling',
    'rainChancePct',
    'rainAmountMm',
    'substrateDry',
    'fleeceDry',
    'seamDry',
    'substrateClean',
    'lapClean',
    'compatibility',
    'intakes',
    'deckMoisture',
    'sheetState',
    'dropPct',
    'noThunder',
    'surfaceWet'
  ]
  return facts({
    ...Object.fromEntries(numbers.map((name) => [name, gone])),
    sunUp: false,
    daylightMin: null,
    welders: [],
    thunderThisHour: null,
    thunderWithin2h: null,
    kit: { isoC: gone, resinC: gone, mixed: gone, expiresOn: gone, daysLeft: null },
    startUp: { tight: gone, purged: gone, nozzle: gone, tested: gone }
  })
}

const common = resolveSheet(commonPractice)

/** The common-practice sheet. */
export function sheet(limits: Partial<Record<LimitName, Limit>> = {}): LimitsSheet {
  return { ...common, limits: { ...common.limits, ...limits } }
}

/** One row of a rule's table: what is known → outcome, and what to do. */
export type Row = readonly [name: string, overrides: Overrides, outcome: string | null, fix: string | null]

/** Runs one rule on facts that are go but for the overrides. */
export function check(rule: Rule, activity: Activity, overrides: Overrides, on: LimitsSheet = sheet()): Verdict | null {
  return rule.check(facts(overrides), on, activity)
}

/** Outcome and fix only. */
export function shortly(rule: Rule, activity: Activity, overrides: Overrides, on?: LimitsSheet): readonly [string | null, string | null] {
  const verdict = check(rule, activity, overrides, on)
  return verdict === null ? [null, null] : [verdict.outcome, verdict.fix]
}
