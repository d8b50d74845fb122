import type { LapsedBy } from '../../facts.js'
import { fromIso, type Instant } from '../../instant.js'
import { type Holding, hold, noHold, release } from '../../welds/holding.js'
import { metresByWelder } from '../../welds/metres.js'
import type { CouponCause, CouponData, LaidData, WelderData } from '../data.js'
import type { Noted, Step } from './noted.js'

/** A judged coupon on the chart. */
export interface CouponMark {
  readonly at: Instant
  readonly widthMm: number
  readonly minWidthMm: number
  readonly passed: boolean
}

/** May it weld, and what became of its metres: cleared, on hold, released. */
export interface WelderState extends Holding {
  readonly name: string
  readonly status: 'cleared' | 'failed' | 'lapsed' | 'none'
  readonly lapsedBy: LapsedBy | null
  /** Last coupon that was judged. */
  readonly coupon: Noted<CouponData> | null
  /** Narrowest widths of the judged coupons, newest last; at most `widthsKept`. */
  readonly widthsMm: readonly number[]
  /** The same coupons with what else the chart needs. */
  readonly trail: readonly CouponMark[]
  /** Coupons that failed for one cause, one after another. */
  readonly failing: { readonly cause: CouponCause; readonly count: number } | null
  readonly off: boolean
}

/** An individuals chart needs some twenty values; more tell of another season. */
export const widthsKept = 30

export function emptyWelder(name: string): WelderState {
  return { name, status: 'none', lapsedBy: null, coupon: null, widthsMm: [], trail: [], failing: null, ...noHold, off: false }
}

/** A state as an earlier version kept it, with what it did not know yet. */
export function wholeWelder(name: string, kept: Partial<WelderState> | null): WelderState {
  return { ...emptyWelder(name), ...kept }
}

export function stepWelder(before: WelderState, step: Step): WelderState {
  const state = wholeWelder(before.name, before)
  if (step.type === 'coupon') return (step.data as unknown as CouponData).cut ? stepCut(state, step) : stepCoupon({ ...state, off: false }, step)
  if (step.type === 'welder') return stepEvent(state, step.data as unknown as WelderData)
  return step.type === 'laid' ? stepLaid(state, step.data as unknown as LaidData) : state
}

function stepCoupon(state: WelderState, step: Step): WelderState {
  const coupon = step.data as unknown as CouponData
  if (coupon.passed === null) return state
  const { widthMm, minWidthMm, passed, cause } = coupon
  const judged: Noted<CouponData> = { value: coupon, at: step.at, seq: step.seq }
  const widthsMm = [...state.widthsMm, widthMm].slice(-widthsKept)
  const trail = [...state.trail, { at: step.at, widthMm, minWidthMm, passed }].slice(-widthsKept)
  const next = { ...state, coupon: judged, widthsMm, trail }
  if (passed) return { ...next, status: 'cleared', lapsedBy: null, failing: null, clearedM: state.clearedM + state.sincePassM, sincePassM: 0 }
  const failing = !cause ? null : { cause, count: state.failing?.cause === cause ? state.failing.count + 1 : 1 }
  return fail({ ...next, failing })
}

/** What was welded since the last pass is under suspicion. */
function fail(state: WelderState): WelderState {
  return { ...state, ...hold({ ...state, sincePassM: 0 }, state.sincePassM), status: 'failed', lapsedBy: 'failed' }
}

/** A piece cut out of a seam: two good ones in turn end the cutting back. A bad one where nothing is on hold yet is a failed coupon. */
function stepCut(state: WelderState, { data }: Step): WelderState {
  const { passed } = data as unknown as CouponData
  if (passed === null) return state
  if (!(state.onHoldM > 0)) return passed ? state : fail(state)
  return { ...state, goodCuts: passed ? state.goodCuts + 1 : 0 }
}

/** Whatever happens to a cleared welder lapses its clearance; being switched off also takes it out of use. */
function stepEvent(state: WelderState, data: WelderData): WelderState {
  const { event } = data
  if (event === 'probed') return state.onHoldM > 0 ? { ...state, probed: true } : state
  if (event === 'released') return { ...state, ...release(state, data.metresM ?? state.onHoldM) }
  if (data.couponAt !== undefined) return ofCoupon(state, data.couponAt) ? lapsed(state, event) : state
  const next = { ...state, off: event === 'off' }
  const by = isOfSheet(event) ? otherSheet(data, state.coupon?.value) : event
  return by === null ? next : lapsed(next, by)
}

const ofSheet = { thickness: 'thicknessMm', lot: 'lot', colour: 'colour' } as const
const sheetEvents = ['thickness', 'lot', 'colour'] as const

function isOfSheet(event: LapsedBy): boolean {
  return event === 'old-sheet' || (sheetEvents as readonly LapsedBy[]).includes(event)
}

/** In what the sheet that is welded now differs from that of the coupon; null for the same one. What was not said of the coupon differs. */
function otherSheet(data: WelderData, coupon: CouponData | undefined): LapsedBy | null {
  if (data.event === 'old-sheet') return coupon?.old ? null : 'old-sheet'
  return sheetEvents.find((event) => data[ofSheet[event]] !== undefined && data[ofSheet[event]] !== coupon?.[ofSheet[event]]) ?? null
}

function lapsed(state: WelderState, by: LapsedBy): WelderState {
  return state.status === 'cleared' ? { ...state, status: 'lapsed', lapsedBy: by } : state
}

function ofCoupon({ coupon }: WelderState, couponAt: string): boolean {
  return coupon !== null && coupon.at === fromIso(couponAt)
}

/** Welded while cleared counts from the last pass; welded while not cleared is on hold at once. */
function stepLaid(before: WelderState, laid: LaidData): WelderState {
  const metres = metresByWelder(laid).get(before.name) ?? 0
  const then = laid.lapsed?.[before.name]
  const late = then !== undefined && ofCoupon(before, then.couponAt)
  const state = late && then.by !== null ? lapsed(before, then.by) : before
  return state.status === 'cleared' && !late ? { ...state, sincePassM: state.sincePassM + metres } : { ...state, ...hold(state, metres) }
}
