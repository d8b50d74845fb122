import type { Instant } from '../instant.js'
import { emptyClosing } from '../log/states/closing.js'
import { type DayState, weldedAt } from '../log/states/day.js'
import type { WelderState } from '../log/states/welder.js'

/** NFPA 51B as read second-hand: at least an hour after hot work ends. The permit decides. */
const defaultWatchMin = 60

export interface FireWatch {
  /** `unsigned`: its time is over and nobody has said that it was kept to the end. */
  readonly state: 'none' | 'running' | 'unsigned' | 'done'
  readonly heatAt: Instant | null
  readonly until: Instant | null
  /** Minutes left, rounded up; 0 when none are. */
  readonly leftMin: number
  readonly watchMin: number
  readonly by: string | null
}

type Heated = Pick<DayState, 'laidAt' | 'robotM' | 'handM' | 'othersM' | 'closing'>

/**
 * The watch after the last heat that the log knows of: metres laid with a weld, coupons, repairs, and what was stated. `days`: the
 * days that may still be watched, oldest first (yesterday for those who weld past midnight).
 */
export function fireWatch(days: readonly (Heated | null)[], welders: readonly Pick<WelderState, 'coupon'>[], now: Instant): FireWatch {
  const known = days.filter((day) => day !== null)
  const fires = known.map(({ closing }) => (closing ?? emptyClosing).fire)
  const heatAt = latest([...known.map(heatOf), ...welders.map(({ coupon }) => coupon?.at ?? null)], now)
  const watchMin = fires.findLast((fire) => fire.watchMin !== null)?.watchMin ?? defaultWatchMin
  const by = fires.findLast((fire) => fire.by !== null)?.by ?? null
  if (heatAt === null) return { state: 'none', heatAt, until: null, leftMin: 0, watchMin, by }
  const until = heatAt + watchMin * 60
  const doneAt = latest(
    fires.map((fire) => fire.doneAt),
    now
  )
  const leftMin = Math.max(0, Math.ceil((until - now) / 60))
  if (doneAt !== null && doneAt >= until) return { state: 'done', heatAt, until, leftMin: 0, watchMin, by }
  return { state: leftMin > 0 ? 'running' : 'unsigned', heatAt, until, leftMin, watchMin, by }
}

function heatOf(day: Heated): Instant | null {
  return latest([weldedAt(day), day.closing?.fire.heatAt ?? null], Number.POSITIVE_INFINITY)
}

function latest(instants: readonly (Instant | null)[], until: Instant): Instant | null {
  return instants.reduce<Instant | null>((last, at) => (at === null || at > until || (last !== null && last >= at) ? last : at), null)
}
