import type { LapsedBy } from '../../facts.js'
import type { CouponData, LaidData, WelderData } from '../data.js'
import type { Noted, Step } from './noted.js'

export interface WelderState {
  readonly name: string
  readonly status: 'cleared' | 'failed' | 'lapsed' | 'none'
  readonly lapsedBy: LapsedBy | null
  /** Last coupon that was judged. */
  readonly coupon: Noted<CouponData> | null
  /** Narrowest widths of the judged coupons, newest last; at most `widthsKept`. */
  readonly widthsMm: readonly number[]
  /** Metres welded since the last passing coupon, and metres on hold. */
  readonly sincePassM: number
  readonly onHoldM: number
  readonly off: boolean
}

/** An individuals chart needs some twenty values; more tell of another season. */
export const widthsKept = 30

export function emptyWelder(name: string): WelderState {
  return { name, status: 'none', lapsedBy: null, coupon: null, widthsMm: [], sincePassM: 0, onHoldM: 0, off: false }
}

export function stepWelder(state: WelderState, step: Step): WelderState {
  if (step.type === 'coupon') return stepCoupon({ ...state, off: false }, step)
  if (step.type === 'welder') return stepEvent(state, step.data as unknown as WelderData)
  return step.type === 'laid' ? stepLaid(state, step.data as unknown as LaidData) : state
}

function stepCoupon(state: WelderState, step: Step): WelderState {
  const coupon = step.data as unknown as CouponData
  if (coupon.passed === null) return state
  const judged: Noted<CouponData> = { value: coupon, at: step.at, seq: step.seq }
  const widthsMm = [...state.widthsMm, coupon.widthMm].slice(-widthsKept)
  if (coupon.passed) return { ...state, status: 'cleared', lapsedBy: null, coupon: judged, widthsMm, sincePassM: 0 }
  return { ...state, status: 'failed', lapsedBy: 'failed', coupon: judged, widthsMm, onHoldM: state.onHoldM + state.sincePassM, sincePassM: 0 }
}

/** Whatever happens to a cleared welder lapses its clearance; being switched off also takes it out of use. */
function stepEvent(state: WelderState, { event }: WelderData): WelderState {
  const next = { ...state, off: event === 'off' }
  return state.status === 'cleared' ? { ...next, status: 'lapsed', lapsedBy: event } : next
}

/** Welded while cleared counts from the last pass; welded while not cleared is on hold at once. */
function stepLaid(state: WelderState, laid: LaidData): WelderState {
  const metres = (state.name === 'robot' ? laid.robotM : laid.handM) ?? 0
  return state.status === 'cleared' ? { ...state, sincePassM: state.sincePassM + metres } : { ...state, onHoldM: state.onHoldM + metres }
}
