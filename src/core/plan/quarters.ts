import { weatherFindings } from '../decide.js'
import type { Facts } from '../facts.js'
import type { Activity, Finding } from '../finding.js'
import type { Fix } from '../fix.js'
import { sunEvents } from '../gather/daylight.js'
import { gather } from '../gather/gather.js'
import type { Memory } from '../gather/memory.js'
import type { Instant } from '../instant.js'
import type { LimitsSheet } from '../limits/sheet.js'
import type { Outcome } from '../outcome.js'
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
    const found = weatherFindings(facts, sheet)
    const of = (activity: Activity) => judged(activity, at, found[activity])
    return { facts, of: { spray: of('spray'), lay: of('lay'), weld: of('weld'), people: of('people') } }
  })
}

const nothingToRead: readonly ToRead[] = []

function judged(activity: Activity, at: Instant, findings: readonly Finding<RuleId>[]): Quarter {
  const toRead = findings.some(isSetAside) ? findings.filter(isSetAside).map(({ rule, fix }) => ({ rule, fix })) : nothingToRead
  const kept = toRead.length === 0 ? findings : findings.filter((finding) => !isSetAside(finding))
  // Those of the worst outcome come first, so that the first that decides alone tells it.
  const first = kept.find((finding) => decidesAlone(activity, finding)) ?? null
  const outcome = first?.outcome ?? 'go'
  // Where all is go the tightest number tells more than a plain yes.
  const numbered =
    outcome === 'go' ? kept.find((finding) => finding.ease !== null && finding.outcome === 'go' && decidesAlone(activity, finding)) : undefined
  return { at, outcome, binding: numbered ?? first, findings: kept, toRead }
}

function isSetAside({ rule, outcome, value }: Finding<RuleId>): boolean {
  return outcome === 'unknown' && value === null && ofSurfaceOrKit.has(rule)
}

/** As `decide` has it: people `no-go` stops every activity, anything less of theirs is shown beside it. */
function decidesAlone(activity: Activity, { group, outcome }: Finding<RuleId>): boolean {
  return activity === 'people' || group === 'conditions' || outcome === 'no-go'
}
