import { findingOf, weatherFindings } from '../decide.js'
import type { Facts } from '../facts.js'
import type { Activity, Finding, Verdict } from '../finding.js'
import type { Fix } from '../fix.js'
import { sunEvents } from '../gather/daylight.js'
import { gatherer } from '../gather/gather.js'
import type { Memory } from '../gather/memory.js'
import type { Instant } from '../instant.js'
import { askedOnce, type Seat, weatherJudges } from '../judges.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { type Outcome, rank } from '../outcome.js'
import type { RoofSeries } from '../roof/series.js'
import type { RuleId } from '../rules/index.js'
import type { Forecast } from '../weather/forecast.js'

export const quarterS = 900

/** One activity at one quarter of an hour, as far as weather and people go. */
export interface Quarter {
  readonly at: Instant
  readonly outcome: Outcome
  /** What the outcome comes from: the finding that binds most. Null where nothing was judged. */
  readonly binding: Finding<RuleId> | null
  /** What nothing is known of yet: readings to take, never counted as go. */
  readonly toRead: readonly ToRead[]
}

/** A rule set aside for want of a reading, and the reading. */
export interface ToRead {
  readonly rule: RuleId
  readonly fix: Fix | null
}

/** Everything known at one quarter of an hour. */
export interface Moment {
  readonly facts: Facts
  readonly of: Readonly<Record<Activity, Quarter>>
}

/** Of a surface or a kit: where neither a reading nor the model tells of them. */
const ofSurfaceOrKit: ReadonlySet<RuleId> = new Set(['substrate-temperature', 'dew-margin', 'kit-temperature'])

/** Judges every activity at each of some instants of a local date, with forecast and roof as they are known at `now`. Pure. */
export function moments(
  memory: Memory,
  forecast: Forecast | null,
  sheet: LimitsSheet,
  date: string,
  now: Instant,
  instants: readonly Instant[],
  roof: RoofSeries | null
): readonly Moment[] {
  const sun = sunEvents(memory.settings, date)
  const factsAt = gatherer(memory, forecast, sun, sheet, now, roof)
  return instants.map((at) => {
    const facts = factsAt(at)
    const verdicts = asked.map(({ check, activity }) => check(facts, sheet, activity))
    const people = judged(seats.people, at, verdicts)
    // As `decide` has it: people no-go stops every activity, anything less of theirs is shown beside it.
    const sitting = people.outcome === 'no-go' ? seats : ownSeats
    const of = (activity: 'spray' | 'lay' | 'weld') => judged(sitting[activity], at, verdicts)
    return { facts, of: { spray: of('spray'), lay: of('lay'), weld: of('weld'), people } }
  })
}

/**
 * Everything found of conditions and people at a moment, or by one rule only, in order of how much it binds, without what is set aside.
 * Few ask, so it is made when asked.
 */
export function findingsAt({ facts }: Moment, activity: Activity, sheet: LimitsSheet, only: RuleId | null = null): readonly Finding<RuleId>[] {
  return weatherFindings(activity, facts, sheet, only).filter((finding) => !isSetAside(finding.rule, finding))
}

/** Most of what is asked of a moment is asked by several activities: each verdict is given once, and each judge has its place among them. */
const { asked, seats } = askedOnce(weatherJudges)
/** The same without people. */
const ownSeats = { spray: withoutPeople(seats.spray), lay: withoutPeople(seats.lay), weld: withoutPeople(seats.weld) } as const

function withoutPeople(all: readonly Seat[]): readonly Seat[] {
  return all.filter(({ judge }) => judge.group !== 'people')
}

const nothingToRead: readonly ToRead[] = []

/** Only what is read of most quarters: the outcome, and the one finding that it comes from. All others are left as verdicts. */
function judged(sitting: readonly Seat[], at: Instant, verdicts: readonly (Verdict | null)[]): Quarter {
  const of = ({ place }: Seat): Verdict => verdicts[place] as Verdict
  let toRead = nothingToRead
  let outcome: Outcome = 'go'
  let first: Seat | null = null
  // Where all is go the tightest number tells more than a plain yes.
  let numbered: Seat | null = null
  for (const seat of sitting) {
    const verdict = verdicts[seat.place] as Verdict | null
    if (verdict === null) continue
    if (verdict.outcome === 'go') {
      // Beside anything worse it binds nothing.
      if (outcome !== 'go') continue
      if (verdict.ease === null) first ??= seat
      else if (numbered === null || bindsMore(verdict, of(numbered))) numbered = seat
    } else if (isSetAside(seat.judge.rule, verdict)) toRead = [...toRead, { rule: seat.judge.rule, fix: verdict.fix }]
    else if (outcome === 'go' || first === null || bindsMore(verdict, of(first))) {
      first = seat
      outcome = verdict.outcome
    }
  }
  const bound = outcome === 'go' ? (numbered ?? first) : first
  return { at, outcome, binding: bound === null ? null : findingOf(bound.judge, of(bound)), toRead }
}

/** As `byBinding` has it for two that come in order of rule: of equals the first stays. */
export function bindsMore(verdict: Verdict, than: Verdict): boolean {
  if (verdict.outcome !== than.outcome) return rank[verdict.outcome] > rank[than.outcome]
  if (verdict.ease === null) return than.ease !== null
  return than.ease !== null && verdict.ease < than.ease
}

/** Nothing is known of it, and a reading would tell: never counted, but to be read. */
export function isSetAside(rule: RuleId, { outcome, value }: Verdict): boolean {
  return outcome === 'unknown' && value === null && ofSurfaceOrKit.has(rule)
}
