import type { Activity, Finding } from '../finding.js'
import type { Memory } from '../gather/memory.js'
import { roofOf } from '../gather/roof-of.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { type Outcome, rank } from '../outcome.js'
import { stepS } from '../roof/nodes.js'
import { endsWet, type RoofSeries, spellReachS } from '../roof/series.js'
import type { RuleId } from '../rules/index.js'
import { firstInstantAt } from '../schedule.js'
import type { Forecast } from '../weather/forecast.js'
import { ageOf } from '../weather/lookup.js'
import { binding } from './binding.js'
import { type DeckDay, deckOfDay } from './deck-day.js'
import { sprayFrom, waitForDeck } from './deck-wait.js'
import { type Hazard, hazardsOf } from './hazards.js'
import { type Moment, moments, type Quarter, quarterS, type ToRead } from './quarters.js'
import { type Band, bandsOf, type Window, windowsOf } from './windows.js'

/** Local hours that a plan of a day is made for. */
const dayFrom = '05:00'
const dayTo = '21:00'

export interface ActivityOutlook {
  /** Of the best window; no-go when there is none, unknown when nothing is known. */
  readonly outcome: Outcome
  readonly bands: readonly Band[]
  readonly windows: readonly Window[]
  /** What stands most in the way, or would first; null when nothing was judged. */
  readonly binding: Finding<RuleId> | null
  /** Rules of a surface or a kit that the forecast says nothing of: set aside here, to be read before the work begins. */
  readonly toRead: readonly ToRead[]
}

/** Lowest and highest of the day by the forecast, or by a reading while that holds. */
export interface Range {
  readonly min: number
  readonly max: number
}

/** Rain of the quarters of a day. */
export interface RainOfDay {
  /** The forecast tells of every quarter whether it rains; of none, where there are no quarters. */
  readonly known: boolean
  /** First quarter that it falls in. */
  readonly fromAt: Instant | null
}

/** A day as the weather has it: conditions and people, no checklist. */
export interface Outlook {
  readonly date: string
  /** False without a forecast, or with one that says nothing of these hours. */
  readonly known: boolean
  readonly from: Instant | null
  readonly to: Instant | null
  readonly activities: Readonly<Record<Activity, ActivityOutlook>>
  /** What threatens people, worst first. */
  readonly hazards: readonly Hazard[]
  readonly airC: Range | null
  readonly gustKmh: Range | null
  readonly rainChancePct: Range | null
  readonly deck: DeckDay
  /** Of the deck at its first quarter; null where nobody knows, and without quarters. */
  readonly wetFirst: boolean | null
  readonly rain: RainOfDay
  /** Of the substrate in the quarters that are best to spray; null where none can be sprayed, or nothing is known of it. */
  readonly sprayedC: Range | null
  /** Not before the deck is dry and sheets have relaxed on it; null where it is dry from the start, or nobody knows. */
  readonly sprayFromAt: Instant | null
}

/**
 * The outlook of a local date (YYYY-MM-DD) as known at `now`: every 15 min from 05:00 to 21:00 site time, or from `now` on,
 * until the forecast ends. `roof` is given where it was reckoned before for the same `now`. Pure.
 */
export function outlook(
  memory: Memory,
  forecast: Forecast | null,
  sheet: LimitsSheet,
  date: string,
  now: Instant,
  roof: RoofSeries | null = roofOfDay(memory, forecast, sheet, date, now)
): Outlook {
  const instants = quartersOf(date, memory.settings.zone, now, endOf(forecast, now))
  const all = moments(memory, forecast, sheet, date, now, instants, roof)
  const known = all.some(({ facts }) => facts.airC.value !== null || facts.windKmh.value !== null)
  const of = (activity: Activity) => quartersOutlook(all.map((moment) => moment.of[activity]))
  const quartersOutlook = (seen: readonly Quarter[], open = seen) => activityOutlook(seen, open, sheet, known)
  const airC = rangeOf(all, 'airC')
  const deck = deckOfDay(roof, afterSaid(instants[0], now))
  const sprayFromAt = sprayFrom(deck, airC?.min ?? null, sheet)
  const spray = waitForDeck(all, deck, sprayFromAt)
  const last = instants.at(-1)
  return {
    date,
    known,
    from: instants[0] ?? null,
    to: last === undefined ? null : last + quarterS,
    activities: { spray: quartersOutlook(spray.seen, spray.open), lay: of('lay'), weld: of('weld'), people: of('people') },
    hazards: hazardsOf(all, sheet),
    airC,
    gustKmh: rangeOf(all, 'gustKmh'),
    rainChancePct: rangeOf(all, 'rainChancePct'),
    deck,
    wetFirst: all[0]?.facts.surfaceWet.value ?? null,
    rain: rainOf(all),
    sprayedC: rangeOf(bestOf(all, spray.open), 'substrateC'),
    sprayFromAt
  }
}

function rainOf(all: readonly Moment[]): RainOfDay {
  const falls = all.map(({ facts }) => facts.rainFalling.value)
  const first = falls.indexOf(true)
  return { known: falls.length > 0 && !falls.includes(null), fromAt: all[first]?.facts.at ?? null }
}

/** The moments of the quarters with the best outcome; none where all are no-go. */
function bestOf(all: readonly Moment[], quarters: readonly Quarter[]): readonly Moment[] {
  const best = Math.min(...quarters.map(({ outcome }) => rank[outcome]))
  return best === rank['no-go'] ? [] : all.filter((_, index) => rank[quarters[index]?.outcome ?? 'no-go'] === best)
}

/** What is said now of the deck holds from the next step of the roof on. */
function afterSaid(first: Instant | undefined, now: Instant): Instant | null {
  return first === undefined ? null : Math.max(first, now + stepS)
}

function endOf(forecast: Forecast | null, now: Instant): Instant {
  const last = forecast === null || ageOf(forecast, now) === 'dead' ? undefined : forecast.hours.at(-1)
  return last?.at ?? Number.POSITIVE_INFINITY
}

/**
 * The roof as far as the outlook of a local date looks: a spell of wetness is looked for 36 h from its first quarter on. As far as
 * there is any where the deck is still wet then, since its day begins when it is dry. What both tell of the same instants is the same.
 */
export function roofOfDay(memory: Memory, forecast: Forecast | null, sheet: LimitsSheet, date: string, now: Instant): RoofSeries | null {
  const first = firstInstantAt(date, dayFrom, memory.settings.zone)
  if (first === null) return roofOf(memory, forecast, sheet, now)
  const aheadH = Math.ceil((Math.max(first, now) - now + spellReachS) / 3600) + 1
  const roof = roofOf(memory, forecast, sheet, now, aheadH)
  return roof !== null && endsWet(roof.substrate) ? roofOf(memory, forecast, sheet, now) : roof
}

/** Full quarters of an hour of the local day that are not over. */
function quartersOf(date: string, zone: string, now: Instant, end: Instant): readonly Instant[] {
  const [first, last] = [firstInstantAt(date, dayFrom, zone), firstInstantAt(date, dayTo, zone)]
  if (first === null || last === null) return []
  const from = Math.max(first, Math.floor(now / quarterS) * quarterS)
  const count = Math.max(0, Math.floor((Math.min(last, end) - from) / quarterS))
  return Array.from({ length: count }, (_, index) => from + index * quarterS)
}

/** Bands of what is seen, windows of what is open: the same but for spraying on a deck not dry yet. */
function activityOutlook(seen: readonly Quarter[], open: readonly Quarter[], sheet: LimitsSheet, known: boolean): ActivityOutlook {
  const windows = windowsOf(open, sheet.site.minWindowMin)
  return {
    outcome: known && seen.length > 0 ? best(windows) : 'unknown',
    bands: bandsOf(seen),
    windows: known ? windows : [],
    binding: binding(seen, windows),
    toRead: onceEach(seen.flatMap(({ toRead }) => toRead))
  }
}

function onceEach(all: readonly ToRead[]): readonly ToRead[] {
  return [...new Map(all.map((each) => [each.rule, each])).values()]
}

function best(windows: readonly Window[]): Outcome {
  return windows.reduce<Outcome>((found, { outcome }) => (rank[outcome] < rank[found] ? outcome : found), 'no-go')
}

function rangeOf(all: readonly Moment[], name: 'airC' | 'gustKmh' | 'rainChancePct' | 'substrateC'): Range | null {
  let [min, max] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const { facts } of all) {
    const { value } = facts[name]
    if (value === null) continue
    min = Math.min(min, value)
    max = Math.max(max, value)
  }
  return min <= max ? { min, max } : null
}
