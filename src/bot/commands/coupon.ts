import { certain, isEstimate } from '../../core/fact.js'
import type { Facts } from '../../core/facts.js'
import type { Finding } from '../../core/finding.js'
import { localDate } from '../../core/instant.js'
import type { LimitsSheet } from '../../core/limits/sheet.js'
import type { CouponData } from '../../core/log/data.js'
import { emptyDay } from '../../core/log/states/day.js'
import { judge } from '../../core/rules/judge.js'
import { clearance } from '../../core/welds/clearance.js'
import { judgeCoupon } from '../../core/welds/coupon.js'
import { leastMm, seamLimit } from '../../core/welds/seam-limit.js'
import { type Done, type OnSite, refuse, told } from '../context.js'
import { factsNow } from '../decision/facts-now.js'
import { aroundNow, welderNumbers, welderOf } from '../decision/welder-numbers.js'
import type { Said } from '../words/said.js'

/** A coupon: judged by its peel and its narrowest width, kept with the conditions it was made in. */
export async function coupon(said: Extract<Said, { command: 'weld coupon' }>, on: OnSite, at: number): Promise<Done> {
  const { session, sheet } = on
  const { widthsMm, peel, warm, ...settings } = said.coupon
  const widthMm = widthsMm.length === 0 ? null : Math.min(...widthsMm)
  if (widthMm === null) return refuse('missing', 'width', { label: 'width' })
  const minWidthMm = leastMm(seamLimit(said.welder, sheet))
  // Conditions and failures of when it was made, which a late message is not.
  const then = session.asOf(at)
  const { failing } = await welderOf(then, said.welder)
  const judged = judgeCoupon({ widthMm, peel, warm, minWidthMm, failedBefore: (cause) => (failing?.cause === cause ? failing.count : 0) })
  const { passed, cause } = judged
  const conditions = await conditionsOf({ ...on, session: then }, at)
  const data: CouponData = { widthsMm, widthMm, peel, ...(warm ? { warm } : {}), ...settings, passed, cause, minWidthMm, conditions }
  await session.log('coupon', `welder:${said.welder}`, data, at)
  const state = await welderOf(session, said.welder)
  const after = welderNumbers(state, clearance(state, await aroundNow(on), sheet), sheet)
  const finding = widthFinding(data, at, sheet, said.welder)
  return told({
    command: 'weld',
    outcome: finding.outcome,
    findings: [finding],
    numbers: { welder: said.welder, cut: data.cut ?? false, passed, widthMm, minWidthMm, cause, move: { ...judged.move }, ...after }
  })
}

async function conditionsOf(on: OnSite, at: number): Promise<CouponData['conditions']> {
  const { facts } = await factsNow(on)
  const today = (await on.session.state(`day:${localDate(at, on.session.settings.zone)}`)) ?? emptyDay
  const lead = today.latest.lead?.value
  return { ...weatherOf(facts), ...(lead === undefined ? {} : { lead }) }
}

const watched = ['airC', 'sheetC', 'windKmh', 'cloudPct'] as const

/** With the names of what is an estimate, so that a record does not tell it as read. */
function weatherOf(facts: Pick<Facts, (typeof watched)[number]>) {
  const { airC, sheetC, windKmh, cloudPct } = facts
  const estimated = watched.filter((name) => facts[name].value !== null && isEstimate(facts[name]))
  const values = { airC: airC.value, sheetC: sheetC.value, windKmh: windKmh.value, cloudPct: cloudPct.value }
  return estimated.length === 0 ? values : { ...values, estimated }
}

/** The width as a finding; a bad peel fails the coupon whatever its width, a warm or half told one is not judged. */
function widthFinding(data: CouponData, at: number, sheet: LimitsSheet, welder: string): Finding<'coupon-width'> {
  const fixes = { read: 'state:peel', low: 'weld:coupon', high: 'weld:coupon' } as const
  const verdict = judge(certain(data.widthMm, at, 'reading'), 'mm', seamLimit(welder, sheet), fixes)
  const outcome = data.passed === null ? 'unknown' : data.passed ? 'go' : 'no-go'
  const fix = outcome === 'go' ? null : outcome === 'no-go' ? (data.cut ? 'cut:back' : 'weld:coupon') : data.warm ? 'wait:cooled' : 'state:peel'
  return { rule: 'coupon-width', activity: 'weld', group: 'checklist', ...verdict, outcome, fix }
}
