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

const asked = [
  'airC',
  'rhPct',
  'dewPointC',
  'windKmh',
  'gustKmh',
  'sunWm2',
  'substrateC',
  'sheetC',
  'substrateDry',
  'fleeceDry',
  'lapDry',
  'rainFalling',
  'rainChancePct',
  'thunder'
] as const satisfies readonly (keyof Latest)[]

/** What was last said of all that weather and roof have to do with. */
export type Said = { readonly [K in (typeof asked)[number]]: Latest[K] | undefined }

/** Looked up once for a whole plan, which asks for the same things at a hundred instants. */
export function saidOf(memory: Memory): Said {
  return Object.fromEntries(asked.map((key) => [key, last(memory, key)])) as Said
}

/** What was last said today. */
export function saidToday<K extends keyof Latest>(memory: Memory, key: K): Latest[K] | undefined {
  return memory.today.latest[key]
}

/** When rain was last stated to be falling. */
export function lastRain({ today, yesterday }: Memory): number | null {
  return today.rainFellAt ?? yesterday.rainFellAt
}
