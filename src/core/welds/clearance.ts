import type { Fact } from '../fact.js'
import type { Facts, LapsedBy, WelderFact } from '../facts.js'
import { type Instant, localDate, localTime } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import type { CouponData } from '../log/data.js'
import type { DayState } from '../log/states/day.js'
import { farthestFrom } from '../log/states/extremes.js'
import type { Noted } from '../log/states/noted.js'
import type { WelderState } from '../log/states/welder.js'
import { round6 } from '../units.js'
import type { Hour } from '../weather/hour.js'
import { firstAfter } from '../weather/lookup.js'

/** What holds at the instant of the question. */
export type WeldNow = Pick<Facts, 'airC' | 'sheetC' | 'windKmh' | 'cloudPct' | 'rainFalling'>

/** What a clearance is looked at with: the instant, what holds then, and what the log and the forecast tell of the day. */
export interface Around {
  readonly now: Instant
  readonly zone: string
  readonly facts: WeldNow
  readonly today: DayState
  /** Of the forecast; those between coupon and now tell of rain that nobody stated. */
  readonly hours: readonly Hour[]
}

/** Half-days part here, site time. */
const noon = '12:00'
const hourS = 3600

/**
 * May this welder weld? What its log says, and what lapses a clearance by itself: another day, the other half of the day, another
 * lead or source, conditions changed since the coupon. What was read lapses it for good, whatever is read later; an estimate
 * only as long as it says so. Pure; the welder's own events are in its state.
 */
export function clearance(welder: WelderState, around: Around, sheet: LimitsSheet): WelderFact {
  const { name, coupon } = welder
  const { now, zone } = around
  if (coupon === null) return { name, status: 'none', lapsedBy: null, widthMm: null, at: null }
  const told = { name, widthMm: coupon.value.widthMm, at: coupon.at }
  if (localDate(coupon.at, zone) !== localDate(now, zone)) return { ...told, status: 'none', lapsedBy: null }
  if (welder.status !== 'cleared') return { ...told, status: welder.status, lapsedBy: welder.lapsedBy }
  const lapsedBy = lapse(coupon, around, sheet)
  return lapsedBy === null ? { ...told, status: 'cleared', lapsedBy } : { ...told, status: 'lapsed', lapsedBy }
}

function lapse(coupon: Noted<CouponData>, around: Around, sheet: LimitsSheet): LapsedBy | null {
  const { now, zone } = around
  if (localTime(coupon.at, zone) < noon && localTime(now, zone) >= noon) return 'half-day'
  return changedLead(coupon, around.today) ?? changedWeather(coupon, around, sheet)
}

/** A lead stated since for the first time is no change of one. */
function changedLead({ value, at, seq }: Noted<CouponData>, { latest }: DayState): LapsedBy | null {
  const then = value.conditions.lead
  const now = latest.lead
  if (then === undefined || now === undefined || now.at < at || (now.at === at && now.seq < seq)) return null
  if (then.leadM !== now.value.leadM || then.areaMm2 !== now.value.areaMm2) return 'lead'
  return then.volts !== undefined && now.value.volts !== undefined && then.volts !== now.value.volts ? 'source' : null
}

const measured = [
  ['airC', 'airK', 'air'],
  ['sheetC', 'sheetK', 'sheet'],
  ['windKmh', 'windKmh', 'wind']
] as const

function changedWeather(coupon: Noted<CouponData>, around: Around, { changed, limits }: LimitsSheet): LapsedBy | null {
  const { facts, today } = around
  const { conditions } = coupon.value
  for (const [key, limit, by] of measured) {
    const then = conditions[key]
    if (then === null) continue
    const { value } = facts[key]
    const read = farthestFrom(then, today.extremes?.[key], coupon)
    if (moreThan(value === null ? null : Math.abs(value - then), changed[limit]) || moreThan(read, changed[limit])) return by
  }
  if (flipped(conditions.cloudPct, facts.cloudPct, changed.cloudLowPct, changed.cloudHighPct)) return 'cloud'
  return rainEnded(coupon.at, around, limits.rainAmount.max ?? 0) ? 'rain' : null
}

function moreThan(distance: number | null, limit: number): boolean {
  return distance !== null && round6(distance) > limit
}

function flipped(then: number | null, now: Fact, lowPct: number, highPct: number): boolean {
  if (then === null || now.value === null) return false
  return (then <= lowPct && now.value >= highPct) || (then >= highPct && now.value <= lowPct)
}

/** Rain fell since and ended: as stated, or in whole hours of the forecast that nobody stated anything against. */
function rainEnded(since: Instant, { now, facts, today, hours }: Around, amountMm: number): boolean {
  const { rainFellAt, rainOverFellAt, latest } = today
  if (rainOverFellAt != null && rainOverFellAt >= since) return true
  if (facts.rainFalling.value === true) return false
  if (rainFellAt !== null && rainFellAt >= since) return true
  return rainedBetween(hours, Math.max(since, latest.rainFalling?.at ?? since), now, amountMm)
}

function rainedBetween(hours: readonly Hour[], from: Instant, to: Instant, amountMm: number): boolean {
  for (let index = firstAfter(hours, from); index < hours.length; index += 1) {
    const { at, rainMm } = hours[index] as Hour
    if (at > to) return false
    if (at - hourS >= from && rainMm !== null && rainMm > 0 && rainMm >= amountMm) return true
  }
  return false
}
