import { certain } from '../../core/fact.js'
import type { Facts, WelderFact } from '../../core/facts.js'
import type { Finding } from '../../core/finding.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import type { CouponData } from '../../core/log/data.js'
import { emptyWelder, type WelderState } from '../../core/log/states/welder.js'
import { judge } from '../../core/rules/judge.js'
import { chanceShort, individualsChart } from '../../core/welds/chart.js'
import { clearance } from '../../core/welds/clearance.js'
import { judgeCoupon } from '../../core/welds/coupon.js'
import { leastMm, seamLimit } from '../../core/welds/seam-limit.js'
import { type Done, type OnSite, refuse, told } from '../context.js'
import { factsNow } from '../decision/facts-now.js'
import type { Said } from '../words/said.js'
import { shown } from './weld.js'

/** A coupon: judged by its peel and its narrowest width, kept with the conditions it was made in. */
export async function coupon(said: Extract<Said, { command: 'weld coupon' }>, on: OnSite, at: number): Promise<Done> {
  const { session, sheet } = on
  const { widthsMm, peel, warm, ...settings } = said.coupon
  const widthMm = widthsMm.length === 0 ? null : Math.min(...widthsMm)
  if (widthMm === null) return refuse('missing', 'width', { label: 'width' })
  const minWidthMm = leastMm(seamLimit(said.welder, sheet))
  const judged = judgeCoupon({ widthMm, peel, warm, minWidthMm })
  // Conditions of when it was made, which a late message is not.
  const { facts } = await factsNow({ ...on, session: session.asOf(at) })
  const data: CouponData = {
    widthsMm,
    widthMm,
    peel,
    ...(warm ? { warm } : {}),
    ...settings,
    passed: judged.passed,
    cause: judged.cause,
    minWidthMm,
    conditions: conditionsOf(facts)
  }
  await session.log('coupon', `welder:${said.welder}`, data, at)
  const after = await welderNow(on, said.welder)
  const finding = widthFinding(data, at, on.sheet, said.welder)
  return told({
    command: 'weld',
    outcome: finding.outcome,
    findings: [finding],
    numbers: { welder: said.welder, passed: judged.passed, widthMm, minWidthMm, cause: judged.cause, move: { ...judged.move }, ...after }
  })
}

/** `/weld NAME restart` and the like: the clearance lapses. */
export async function welderEvent(said: Extract<Said, { command: 'weld event' }>, on: OnSite, at: number): Promise<Done> {
  await on.session.log('welder', `welder:${said.welder}`, said.event, at)
  return showWelder(on, said.welder)
}

export async function welderShow(said: Extract<Said, { command: 'weld show' }>, on: OnSite): Promise<Done> {
  return showWelder(on, said.welder)
}

async function showWelder(on: OnSite, name: string): Promise<Done> {
  const state = await on.session.state(`welder:${name}`)
  if (state === null) return refuse('not-found', name, { label: 'welder' })
  const last = state.coupon?.value ?? null
  const after = await welderNow(on, name)
  const numbers = {
    welder: name,
    passed: last?.passed ?? null,
    widthMm: last?.widthMm ?? null,
    minWidthMm: leastMm(seamLimit(name, on.sheet)),
    cause: last?.cause ?? null,
    move: keep,
    ...after
  }
  return told({ command: 'weld', outcome: after.cleared ? 'go' : after.lapsedBy === null ? 'unknown' : 'no-go', numbers })
}

const keep = { temperature: 'keep', speed: 'keep', pressure: 'keep' } as const

/** Where a welder stands, with its trend. */
async function welderNow(on: OnSite, name: string) {
  const { session, sheet } = on
  const state = (await session.state(`welder:${name}`)) ?? emptyWelder(name)
  const { facts, rainFellAt } = await factsNow(on)
  const fact: WelderFact = clearance(state, session.now, session.settings.zone, facts, rainFellAt, sheet)
  const { cleared, lapsedBy } = shown(fact)
  return { cleared, lapsedBy, onHoldM: state.onHoldM, ...trend(state, leastMm(seamLimit(name, sheet))) }
}

function trend({ widthsMm }: WelderState, minWidthMm: number) {
  const chart = widthsMm.length < 2 ? null : individualsChart(widthsMm)
  if (chart === null) return { meanMm: widthsMm[0] ?? null, sigmaMm: null, chanceShort: null }
  return { meanMm: chart.meanMm, sigmaMm: chart.sigmaMm, chanceShort: chanceShort(chart.meanMm, chart.sigmaMm, minWidthMm) }
}

function conditionsOf({ airC, sheetC, windKmh, cloudPct }: Facts): CouponData['conditions'] {
  return { airC: airC.value, sheetC: sheetC.value, windKmh: windKmh.value, cloudPct: cloudPct.value }
}

/** The width as a finding; a bad peel fails the coupon whatever its width, a warm or half told one is not judged. */
function widthFinding(data: CouponData, at: number, sheet: LimitsSheet, welder: string): Finding<'coupon-width'> {
  const fixes = { read: 'state:peel', low: 'weld:coupon', high: 'weld:coupon' } as const
  const verdict = judge(certain(data.widthMm, at, 'reading'), 'mm', seamLimit(welder, sheet), fixes)
  const outcome = data.passed === null ? 'unknown' : data.passed ? 'go' : 'no-go'
  const fix = outcome === 'go' ? null : outcome === 'no-go' ? 'weld:coupon' : data.warm ? 'wait:cooled' : 'state:peel'
  return { rule: 'coupon-width', activity: 'weld', group: 'checklist', ...verdict, outcome, fix }
}
