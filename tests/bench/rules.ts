import { Engine } from 'json-rules-engine'
import { decide } from '../../src/core/decide.js'
import type { Facts } from '../../src/core/facts.js'
import type { Limit } from '../../src/core/limits/sheet.js'
import { facts, forecast, goFacts, model, said, sheet } from '../support/facts.js'

/** What a bench answers: `value` against `bar`, and what it was measured beside. */
export interface BenchResult {
  /** Of value and bar; a ratio when not said. */
  readonly unit?: string
  readonly name: string
  readonly peer: string
  readonly value: number
  readonly bar: number
  readonly ok: boolean
}

const common = sheet()

/** A good day, a mixed forecast, a bad day: every outcome and the interval rule take part. */
const days: readonly Facts[] = [
  goFacts(),
  facts({ airC: forecast(6, 1.5), substrateC: model(8, 2), substrateDewMarginK: model(3.5, 1), windKmh: forecast(14, 5), gustKmh: forecast(30, 8) }),
  facts({ rainFalling: said(true), substrateDry: said('wet'), intakes: said('open'), kit: { isoC: model(18), resinC: model(19) } })
]

/** Decisions to spray a second, people and all findings with them. */
export function decisionsPerSecond(seconds: number): number {
  let count = 0
  let findings = 0
  const start = performance.now()
  while (performance.now() - start < seconds * 1000) {
    for (let i = 0; i < 200; i++) for (const day of days) findings += decide('spray', day, common).findings.length
    count += 200 * days.length
  }
  if (findings === 0) throw new Error('nothing was decided')
  return count / ((performance.now() - start) / 1000)
}

/** The numbers and statements that the rules for spraying look at, by a plain name. */
function peerFacts(from: Facts): Record<string, unknown> {
  const { kit, startUp } = from
  return {
    iso: kit.isoC.value,
    resin: kit.resinC.value,
    air: from.airC.value,
    substrate: from.substrateC.value,
    dew: from.substrateDewMarginK.value,
    humidity: from.rhPct.value,
    raining: from.rainFalling.value,
    chance: from.rainChancePct.value,
    wind: from.windKmh.value,
    gust: from.gustKmh.value,
    daylight: from.daylightMin,
    dry: from.substrateDry.value,
    fleece: from.fleeceDry.value,
    clean: from.substrateClean.value,
    compatibility: from.compatibility.value,
    intakes: from.intakes.value,
    sheet: from.sheetState.value,
    mixed: kit.mixed.value,
    days: kit.daysLeft,
    tight: startUp.tight.value,
    purged: startUp.purged.value,
    nozzle: startUp.nozzle.value,
    tested: startUp.tested.value,
    thunder: from.noThunder.value,
    heat: from.heatIndexC.value,
    felt: from.feltC.value
  }
}

/** The same limits for the peer: one rule for no-go and one for caution each, as its own documents show. */
function peerEngine(): Engine {
  const engine = new Engine([], { allowUndefinedFacts: true })
  const { limits } = common
  const bands: readonly (readonly [string, Limit])[] = [
    ['iso', limits.kitTemperature],
    ['resin', limits.kitTemperature],
    ['air', limits.airSpray],
    ['substrate', limits.substrate],
    ['dew', limits.dewMarginSpray],
    ['humidity', limits.humidity],
    ['chance', limits.rainChance],
    ['wind', limits.windMeanSpray],
    ['gust', limits.windGustSpray],
    ['daylight', limits.daylight],
    ['wind', limits.windMeanPeople],
    ['gust', limits.windGustPeople],
    ['heat', limits.heatIndex],
    ['felt', limits.windChill]
  ]
  for (const [fact, limit] of bands) {
    addBand(engine, fact, 'no-go', limit.min, limit.max)
    addBand(engine, fact, 'caution', limit.cautionBelow, limit.cautionAbove)
  }
  for (const [fact, wanted] of [
    ['raining', false],
    ['dry', 'dry'],
    ['fleece', 'dry'],
    ['clean', true],
    ['compatibility', 'compatible'],
    ['intakes', 'none'],
    ['sheet', 'relaxed'],
    ['mixed', true],
    ['tight', true],
    ['purged', true],
    ['nozzle', true],
    ['tested', true],
    ['thunder', true]
  ] as const) {
    engine.addRule({ conditions: { all: [{ fact, operator: 'notEqual', value: wanted }] }, event: { type: 'no-go', params: { fact } } })
  }
  addBand(engine, 'days', 'no-go', 0, null)
  addBand(engine, 'days', 'caution', common.kit.expirySoonDays, null)
  return engine
}

function addBand(engine: Engine, fact: string, type: string, low: number | null, high: number | null): void {
  const any = [
    ...(low === null ? [] : [{ fact, operator: 'lessThan', value: low }]),
    ...(high === null ? [] : [{ fact, operator: 'greaterThan', value: high }])
  ]
  if (any.length > 0) engine.addRule({ conditions: { any }, event: { type, params: { fact } } })
}

async function peerPerSecond(seconds: number): Promise<number> {
  const engine = peerEngine()
  const inputs = days.map(peerFacts)
  let count = 0
  const start = performance.now()
  while (performance.now() - start < seconds * 1000) {
    for (const input of inputs) await engine.run(input)
    count += inputs.length
  }
  return count / ((performance.now() - start) / 1000)
}

/**
 * All rules for spraying with their findings, against json-rules-engine 7 on the same limits and facts, alternating in one process.
 * One thread, nothing stored. The peer gets the bounds alone: no intervals, no ages, no margins.
 */
export async function benchRules(rounds = 5, seconds = 0.5): Promise<BenchResult> {
  const ratios: number[] = []
  decisionsPerSecond(seconds)
  await peerPerSecond(seconds)
  for (let round = 0; round < rounds; round++) ratios.push(decisionsPerSecond(seconds) / (await peerPerSecond(seconds)))
  ratios.sort((a, b) => a - b)
  const value = ratios[Math.floor(ratios.length / 2)] ?? 0
  return { name: 'decide spray, all findings: decisions/s ÷ evaluations/s of the peer', peer: 'json-rules-engine 7', value, bar: 50, ok: value >= 50 }
}
