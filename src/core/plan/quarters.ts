import { findingOf, weatherFindings } from '../decide.js'
import type { Facts } from '../facts.js'
import type { Activity, Finding, Verdict } from '../finding.js'
import type { Fix } from '../fix.js'
import { sunEvents } from '../gather/daylight.js'
import { gatherer } from '../gather/gather.js'
import type { Memory } from '../gather/memory.js'
import type { Instant } from '../instant.js'
import { type Judge, weatherJudges } from '../judges.js'
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
    // What is said of people is part of every activity: judged once.
    const people = verdictsOf(weatherJudges.people, facts, sheet)
    const of = (activity: Activity) => judged(activity, facts, sheet, people)
    return { facts, of: { spray: of('spray'), lay: of('lay'), weld: of('weld'), people: of('people') } }
  })
}

/** Everything found of conditions and people at a moment, in order of how much it binds, without what is set aside. Few ask, so it is made when asked. */
export function findingsAt({ facts }: Moment, activity: Activity, sheet: LimitsSheet): readonly Finding<RuleId>[] {
  return weatherFindings(activity, facts, sheet).filter((finding) => !isSetAside(finding.rule, finding))
}

const nothingToRead: readonly ToRead[] = []

function verdictsOf(judges: readonly Judge[], facts: Facts, sheet: LimitsSheet): readonly (Verdict | null)[] {
  return judges.map(({ check, activity }) => check(facts, sheet, activity))
}

/** Only what is read of most quarters: the outcome, and the one finding that it comes from. All others are left as verdicts. */
function judged(activity: Activity, facts: Facts, sheet: LimitsSheet, people: readonly (Verdict | null)[]): Quarter {
  const toRead: ToRead[] = []
  let [first, numbered]: [Bound | null, Bound | null] = [null, null]
  let next = 0
  for (const judge of weatherJudges[activity]) {
    const verdict = judge.group === 'people' ? (people[next++] ?? null) : judge.check(facts, sheet, judge.activity)
    if (verdict === null) continue
    if (isSetAside(judge.rule, verdict)) toRead.push({ rule: judge.rule, fix: verdict.fix })
    else if (decidesAlone(activity, judge, verdict)) {
      if (first === null || bindsMore(verdict, first.verdict)) first = { judge, verdict }
      if (isNumber(verdict) && (numbered === null || bindsMore(verdict, numbered.verdict))) numbered = { judge, verdict }
    }
  }
  const outcome = first?.verdict.outcome ?? 'go'
  // Where all is go the tightest number tells more than a plain yes.
  const bound = outcome === 'go' ? (numbered ?? first) : first
  const binding = bound === null ? null : findingOf(bound.judge, bound.verdict)
  return { at: facts.at, outcome, binding, toRead: toRead.length === 0 ? nothingToRead : toRead }
}

interface Bound {
  readonly judge: Judge
  readonly verdict: Verdict
}

/** As `byBinding` has it for two that come in order of rule: of equals the first stays. */
function bindsMore(verdict: Verdict, than: Verdict): boolean {
  if (verdict.outcome !== than.outcome) return rank[verdict.outcome] > rank[than.outcome]
  if (verdict.ease === null) return than.ease !== null
  return than.ease !== null && verdict.ease < than.ease
}

function isNumber({ outcome, ease }: Verdict): boolean {
  return outcome === 'go' && ease !== null
}

function isSetAside(rule: RuleId, { outcome, value }: Verdict): boolean {
  return outcome === 'unknown' && value === null && ofSurfaceOrKit.has(rule)
}

/** As `decide` has it: people `no-go` stops every activity, anything less of theirs is shown beside it. */
function decidesAlone(activity: Activity, { group }: Judge, { outcome }: Verdict): boolean {
  return activity === 'people' || group === 'conditions' || outcome === 'no-go'
}
