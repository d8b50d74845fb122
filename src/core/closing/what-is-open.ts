import type { Instant } from '../instant.js'
import { type DetailKind, type DetailStatus, detailKinds } from '../log/closing-data.js'
import { type Closing, emptyClosing } from '../log/states/closing.js'
import type { DayState } from '../log/states/day.js'
import { emptyPunch, type SiteState } from '../log/states/site.js'
import type { WelderState } from '../log/states/welder.js'
import type { Outcome } from '../outcome.js'
import { failedBonds } from './failed-bonds.js'
import { type FireWatch, fireWatch } from './fire-watch.js'

/** What the log says of a site at the end of a day. */
export interface DayToClose {
  readonly site: SiteState
  readonly today: DayState
  /** Null: nothing was logged. */
  readonly yesterday: DayState | null
  /** Every welder of the site: metres stay on hold from day to day. */
  readonly welders: readonly WelderState[]
  /** What is sprayed (site setting). */
  readonly substrate: string
  readonly now: Instant
}

/** One thing that still stands open, as data: worst ones are no-go, what was not stated is unknown. */
export type OpenItem =
  | { readonly what: 'voids' | 'reprobe' | 'punch'; readonly outcome: Outcome; readonly numbers: readonly number[] }
  | { readonly what: 'on-hold'; readonly outcome: Outcome; readonly welder: string; readonly metresM: number }
  /** `why` unstated: nobody said; open: an open edge and no method. */
  | { readonly what: 'seal'; readonly outcome: Outcome; readonly why: 'unstated' | 'open'; readonly openEdgeM: number | null }
  | { readonly what: 'drains'; readonly outcome: Outcome; readonly why: 'unstated' | 'shut' }
  | { readonly what: 'sheets'; readonly outcome: Outcome; readonly why: 'unstated' | 'loose' }
  | { readonly what: 'bond'; readonly outcome: Outcome; readonly why: 'unstated' | 'failed' | 'unjudged'; readonly substrate: string }
  | { readonly what: 'details'; readonly outcome: Outcome; readonly why: 'bad' | 'unchecked'; readonly kinds: readonly DetailKind[] }
  | { readonly what: 'fire'; readonly outcome: Outcome; readonly why: 'running' | 'unsigned'; readonly until: Instant; readonly leftMin: number }

export interface WhatIsOpen {
  readonly items: readonly OpenItem[]
  readonly fire: FireWatch
  /** Nothing stands open. */
  readonly closed: boolean
}

/**
 * The gate at the end of a day: what still stands open. Seal, drains, loose sheets and test square count only on a day on which
 * something was laid; voids, punch list and metres on hold from day to day. A day record and a wrap-up say the same by it.
 */
export function whatIsOpen(day: DayToClose): WhatIsOpen {
  const { site, today, yesterday, welders, now } = day
  const laid = today.laidAt !== null
  const fire = fireWatch([yesterday, today], welders, now)
  const items: OpenItem[] = [
    ...voidItems(site),
    ...welders
      .filter(({ onHoldM }) => onHoldM > 0)
      .map(({ name, onHoldM }): OpenItem => ({ what: 'on-hold', outcome: 'no-go', welder: name, metresM: onHoldM })),
    ...sealItems(today.closing ?? emptyClosing, laid),
    ...bondItems(day, laid),
    ...detailItems(site, false),
    ...fireItems(fire)
  ]
  return { items, fire, closed: items.length === 0 }
}

function voidItems({ voids, punch = emptyPunch }: SiteState): readonly OpenItem[] {
  const numbered = (state: 'open' | 'repaired') =>
    Object.entries(voids.unsettled)
      .filter(([, each]) => each === state)
      .map(([number]) => Number(number))
      .sort((a, b) => a - b)
  const lists = [
    ['voids', numbered('open'), 'no-go'],
    ['reprobe', numbered('repaired'), 'no-go'],
    ['punch', punch.open, 'caution']
  ] as const
  return lists.flatMap(([what, numbers, outcome]): readonly OpenItem[] => (numbers.length === 0 ? [] : [{ what, outcome, numbers }]))
}

/** Night seal, drains and loose sheets. `needed`: something was laid; what was said to be wrong counts in any case. */
export function sealItems({ seal }: Closing, needed: boolean): readonly OpenItem[] {
  const edge = seal.openEdgeM?.value ?? null
  const open = edge !== null && edge > 0 && seal.method === undefined
  const items: (OpenItem | false)[] = [
    open ? { what: 'seal', outcome: 'no-go', why: 'open', openEdgeM: edge } : edge === null && needed && unsealed,
    stated(
      seal.drainsOpen?.value,
      needed,
      { what: 'drains', outcome: 'no-go', why: 'shut' },
      { what: 'drains', outcome: 'unknown', why: 'unstated' }
    ),
    stated(
      seal.sheetsSafe?.value,
      needed,
      { what: 'sheets', outcome: 'no-go', why: 'loose' },
      { what: 'sheets', outcome: 'unknown', why: 'unstated' }
    )
  ]
  return items.filter((item) => item !== false)
}

const unsealed: OpenItem = { what: 'seal', outcome: 'unknown', why: 'unstated', openEdgeM: null }

function stated(value: boolean | undefined, needed: boolean, wrong: OpenItem, missing: OpenItem): OpenItem | false {
  if (value === undefined) return needed && missing
  return value ? false : wrong
}

/** The substrate of the site has its test square of the day; another one is judged where it was made. A failed one counts in any case. */
function bondItems({ yesterday, today, substrate }: DayToClose, needed: boolean): readonly OpenItem[] {
  const { bonds } = today.closing ?? emptyClosing
  const failed = failedBonds([yesterday, today])
  const items = failed.map((each): OpenItem => ({ what: 'bond', outcome: 'no-go', why: 'failed', substrate: each }))
  if (!needed) return items
  const unjudged = Object.values(bonds).flatMap(({ value }) => (value.passed === null && !failed.includes(value.substrate) ? [value.substrate] : []))
  const told = Object.hasOwn(bonds, substrate) || failed.includes(substrate)
  return [
    ...items,
    ...unjudged.map((each): OpenItem => ({ what: 'bond', outcome: 'unknown', why: 'unjudged', substrate: each })),
    ...(told ? [] : [{ what: 'bond', outcome: 'unknown', why: 'unstated', substrate } as const])
  ]
}

/** Details that are to be mended; `needed`: those that nobody looked at, too. */
export function detailItems({ details = {} }: SiteState, needed: boolean): readonly OpenItem[] {
  const of = (wanted: DetailStatus | null) => detailKinds.filter((kind) => (details[kind]?.value ?? null) === wanted)
  const [bad, unknown] = [of('bad'), needed ? of(null) : []]
  return [
    ...(bad.length === 0 ? [] : [{ what: 'details', outcome: 'no-go', why: 'bad', kinds: bad } as const]),
    ...(unknown.length === 0 ? [] : [{ what: 'details', outcome: 'unknown', why: 'unchecked', kinds: unknown } as const])
  ]
}

function fireItems({ state, until, leftMin }: FireWatch): readonly OpenItem[] {
  if (until === null || (state !== 'running' && state !== 'unsigned')) return []
  return [{ what: 'fire', outcome: state === 'running' ? 'no-go' : 'unknown', why: state, until, leftMin }]
}
