import type { DayState } from '../log/states/day.js'
import type { KitState } from '../log/states/kit.js'
import type { SiteState } from '../log/states/site.js'
import type { WelderState } from '../log/states/welder.js'
import type { SiteSettings } from '../site.js'

/** What the log says of a site at an instant: the states that a question needs. */
export interface Memory {
  readonly settings: SiteSettings
  readonly site: SiteState
  readonly today: DayState
  /** Readings of before midnight still count while they are not past their age. */
  readonly yesterday: DayState
  readonly kit: KitState
  /** Welders in use today. */
  readonly welders: readonly WelderState[]
}

type Latest = DayState['latest']

/** What was last said of one thing, today or yesterday. */
export function last<K extends keyof Latest>(memory: Memory, key: K): Latest[K] | undefined {
  return memory.today.latest[key] ?? memory.yesterday.latest[key]
}

/** What was last said today. */
export function saidToday<K extends keyof Latest>(memory: Memory, key: K): Latest[K] | undefined {
  return memory.today.latest[key]
}

/** When rain was last stated to be falling. */
export function lastRain({ today, yesterday }: Memory): number | null {
  return today.rainFellAt ?? yesterday.rainFellAt
}
