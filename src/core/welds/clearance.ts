import type { Fact } from '../fact.js'
import type { Facts, LapsedBy, WelderFact } from '../facts.js'
import { type Instant, localDate, localTime } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import type { CouponData } from '../log/data.js'
import type { WelderState } from '../log/states/welder.js'

type Conditions = CouponData['conditions']
export type Now = Pick<Facts, 'airC' | 'sheetC' | 'windKmh' | 'cloudPct' | 'rainFalling'>

/** Half-days part here, site time. */
const noon = '12:00'

/**
 * May this welder weld? What its log says, and what lapses a clearance by itself: another day, the other half of the day,
 * conditions changed since the coupon. Pure; the welder's own events are in its state.
 */
export function clearance(welder: WelderState, now: Instant, zone: string, facts: Now, rainFellAt: Instant | null, sheet: LimitsSheet): WelderFact {
  const { name, coupon } = welder
  if (coupon === null) return { name, status: 'none', lapsedBy: null, widthMm: null, at: null }
  const told = { name, widthMm: coupon.value.widthMm, at: coupon.at }
  if (localDate(coupon.at, zone) !== localDate(now, zone)) return { ...told, status: 'none', lapsedBy: null }
  if (welder.status !== 'cleared') return { ...told, status: welder.status, lapsedBy: welder.lapsedBy }
  const lapsedBy = lapse(coupon.at, coupon.value.conditions, now, zone, facts, rainFellAt, sheet)
  return lapsedBy === null ? { ...told, status: 'cleared', lapsedBy } : { ...told, status: 'lapsed', lapsedBy }
}

function lapse(
  at: Instant,
  then: Conditions,
  now: Instant,
  zone: string,
  facts: Now,
  rainFellAt: Instant | null,
  sheet: LimitsSheet
): LapsedBy | null {
  if (localTime(at, zone) < noon && localTime(now, zone) >= noon) return 'half-day'
  const { changed } = sheet
  if (moved(then.airC, facts.airC, changed.airK)) return 'air'
  if (moved(then.sheetC, facts.sheetC, changed.sheetK)) return 'sheet'
  if (moved(then.windKmh, facts.windKmh, changed.windKmh)) return 'wind'
  if (flipped(then.cloudPct, facts.cloudPct, changed.cloudLowPct, changed.cloudHighPct)) return 'cloud'
  return rainFellAt !== null && rainFellAt >= at && facts.rainFalling.value !== true ? 'rain' : null
}

function moved(then: number | null, now: Fact, by: number): boolean {
  return then !== null && now.value !== null && Math.abs(now.value - then) > by
}

function flipped(then: number | null, now: Fact, lowPct: number, highPct: number): boolean {
  if (then === null || now.value === null) return false
  return (then <= lowPct && now.value >= highPct) || (then >= highPct && now.value <= lowPct)
}
