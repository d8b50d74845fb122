import { decide } from '../decide.js'
import type { Facts } from '../facts.js'
import type { Activity, Finding } from '../finding.js'
import type { Fix } from '../fix.js'
import { sunEvents } from '../gather/daylight.js'
import { gather } from '../gather/gather.js'
import type { Memory } from '../gather/memory.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import { type Outcome, worst } from '../outcome.js'
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
  /** Of conditions and people, in order of how much they bind, without those set aside. */
  readonly findings: readonly Finding<RuleId>[]
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
  return instants.map((at) => {
    const facts = gather(memory, forecast, sun, sheet, at, now, roof)
    const of = (activity: Activity) => judged(activity, facts, sheet)
    return { facts, of: { spray: of('spray'), lay: of('lay'), weld: of('weld'), people: of('people') } }
  })
}

function judged(activity: Activity, facts: Facts, sheet: LimitsSheet): Quarter {
  const { findings } = decide(activity, facts, sheet)
  const weather = findings.filter(({ group }) => group !== 'checklist')
  const kept = weather.filter((finding) => !isSetAside(finding))
  const outcome = outcomeOf(activity, kept)
  const deciding = kept.filter((finding) => finding.outcome === outcome && decidesAlone(activity, finding))
  // Where all is go the tightest number tells more than a plain yes.
  const numbered = outcome === 'go' ? deciding.find(({ ease }) => ease !== null) : undefined
  const toRead = weather.filter(isSetAside).map(({ rule, fix }) => ({ rule, fix }))
  return { at: facts.at, outcome, binding: numbered ?? deciding[0] ?? null, findings: kept, toRead }
}

function isSetAside({ rule, outcome, value }: Finding<RuleId>): boolean {
  return outcome === 'unknown' && value === null && ofSurfaceOrKit.has(rule)
}

/** As `decide` has it: people `no-go` stops every activity, anything less of theirs is shown beside it. */
function decidesAlone(activity: Activity, { group, outcome }: Finding<RuleId>): boolean {
  return activity === 'people' || group === 'conditions' || outcome === 'no-go'
}

function outcomeOf(activity: Activity, findings: readonly Finding<RuleId>[]): Outcome {
  return worst(findings.filter((finding) => decidesAlone(activity, finding)).map(({ outcome }) => outcome))
}
