import type { LapsedBy } from '../../core/facts.js'
import type { Activity, Group } from '../../core/finding.js'
import type { Fix } from '../../core/fix.js'
import type { CouponCause, FoamVerdict, Place, VoidCause, VoidOn } from '../../core/log/data.js'
import type { Outcome } from '../../core/outcome.js'
import type { ErrorCode, FindingId } from '../answer.js'
import type { LabelId } from './labels.js'
import type { CommandName } from './usages.js'

/** `name` goes before a number; `is` says the same without one. */
export interface FindingWords {
  readonly name: string
  readonly is: Readonly<Record<Outcome, string>>
}

/** The usual caution in one line, deferring to local rules. */
export type Caution = 'isocyanates' | 'hotAir' | 'edges' | 'blade' | 'thunder' | 'heat' | 'cold' | 'ice'

/** Numbers of an answer that are listed by name; the ending is the unit. */
export type NumberName =
  | 'airC' | 'rhPct' | 'dewPointC' | 'frostPointC' | 'wetBulbC' | 'substrateC' | 'dewMarginK' | 'kitColdC' | 'kitHotC' | 'windKmh' | 'gustKmh'
  | 'rainChancePct' | 'heatIndexC' | 'windChillC' | 'daylightMin' | 'wbgtC' | 'openTimeS' | 'reachM' | 'stopEveryM' | 'sheetC' | 'dropPct'

export interface FrameWords {
  /** How a person's words are quoted. */
  quote(word: string): string
  readonly yes: string
  readonly no: string
  /** Between the last two of a list. */
  readonly or: string
  more(count: number): string
  logged(ids: string): string
  undo(ids: string): string
  decision(id: string): string
  readonly attribution: Readonly<Record<string, string>>
  from(source: string): string
  issued(at: string): string
  readonly stale: string
  readonly sample: string
  readonly invented: string
  limits(id: string, version: number): string
}

export interface DecisionWords {
  readonly takeReading: string
  toState(count: number): string
  toRead(count: number): string
  atLeast(amount: string): string
  atMost(amount: string): string
  below(amount: string): string
  limit(amount: string): string
  days(count: number): string
  readonly tooOld: string
  readonly forecast: string
  readonly model: string
  readonly tooClose: string
  tightest(finding: string): string
  changes(at: string): string
  readonly closeUp: string
  readonly rest: string
  readonly welders: string
  readonly numbers: Readonly<Record<NumberName, string>>
}

export interface CouponWords {
  passed(welder: string): string
  failed(welder: string): string
  notJudged(welder: string): string
  lapsed(welder: string): string
  readonly welder: string
  width(narrowest: string, least: string | null): string
  readonly causes: Readonly<Record<CouponCause, string>>
  readonly moves: Readonly<Record<'temperature' | 'speed' | 'pressure', Readonly<Record<'up' | 'down', string>>>>
  next(moves: string): string
  readonly oneAtATime: string
  readonly cleared: string
  readonly notCleared: string
  notClearedBy(cause: string): string
  readonly lapsedBy: Readonly<Record<LapsedBy, string>>
  onHold(metres: string): string
  trend(mean: string, sigma: string): string
  short(chance: string): string
}

export interface StripWords {
  pieces(count: number): string
  length(amount: string): string
  land(amount: string, least: string | null): string
  corners(radius: string): string
  perimeter(all: string, robot: string, hand: string): string
}

export interface ProbeWords {
  readonly closeArea: string
  readonly noVoids: string
  readonly states: Readonly<Record<'open' | 'repaired' | 'passed', string>>
  counts(open: number, repaired: number, passed: number): string
  number(n: number): string
  course(n: number): string
  readonly on: Readonly<Record<VoidOn, string>>
  readonly causes: Readonly<Record<VoidCause, string>>
  at(distance: string): string
  long(length: string): string
  rate(per100m: string, upper: string | null): string
}

export interface KitWords {
  name(kit: string): string
  readonly iso: string
  readonly resin: string
  parts(shell: string, mean: string, core: string): string
  ready(at: string): string
  cold(at: string): string
  startBy(at: string): string
  mixed(at: string): string
  expires(date: string): string
  lot(lot: string): string
  readonly places: Readonly<Record<Place, string>>
  readonly empty: string
  readonly none: string
}

export interface FoamWords {
  readonly verdicts: Readonly<Record<FoamVerdict, string>>
  openTime(amount: string): string
  scale(times: string): string
}

export interface LaidWords {
  area(amount: string): string
  welded(robot: string, hand: string): string
  yield(real: string, plan: string | null): string
  readonly noPlan: string
  drift(amount: string): string
}

export interface SiteWords {
  title(name: string): string
  readonly sites: string
  readonly none: string
  readonly keys: Readonly<Record<
    'place' | 'zone' | 'units' | 'lang' | 'posts' | 'morning' | 'evening' | 'days' | 'hours' | 'limits' | 'substrate' | 'channel' | 'roof', string
  >>
  readonly units: Readonly<Record<'metric' | 'us', string>>
  readonly langs: Readonly<Record<'en' | 'es' | 'fr', string>>
  readonly posts: Readonly<Record<string, string>>
  readonly noPosts: string
  readonly substrates: Readonly<Record<string, string>>
  roof(width: string, depth: string, height: string): string
  readonly noChannel: string
  readonly closed: string
}

export interface PersonWords {
  readonly me: string
  undone(ids: string, count: number): string
  readonly nothingUndone: string
}

export interface HelpWords {
  readonly commands: string
  readonly more: string
  readonly anyOrder: string
  usage(usage: string): string
  example(example: string): string
}

/** What a refusal knows of what went wrong; words of people are quoted and escaped. Null: not said. */
export interface Wrong {
  readonly word: string | null
  readonly label: string | null
  readonly from: string | null
  readonly to: string | null
  readonly who: string | null
  readonly state: string | null
  readonly ref: string | null
  /** An ambiguous number read both ways. */
  readonly whole: string | null
  readonly decimal: string | null
}

export interface RefusalWords {
  readonly codes: Readonly<Record<ErrorCode, (wrong: Wrong) => string>>
  /** The next step beside the usage; null where the usage says it. */
  readonly next: Readonly<Record<ErrorCode, string | null>>
  readonly nothingLogged: string
  understood(list: string): string
  nearest(list: string): string
  sites(list: string): string
  readonly who: Readonly<Record<string, string>>
}

/** Everything that every language says. A language that lacks a word does not compile. */
export interface Text {
  /** In capitals, for the first line. */
  readonly outcomes: Readonly<Record<Outcome, string>>
  /** Within a line. */
  readonly outcomesWithin: Readonly<Record<Outcome, string>>
  readonly activities: Readonly<Record<Activity, string>>
  readonly groups: Readonly<Record<Group, string>>
  readonly findings: Readonly<Record<FindingId, FindingWords>>
  readonly fixes: Readonly<Record<Fix, string>>
  /** One line each for help. */
  readonly commands: Readonly<Record<CommandName, string>>
  readonly cautions: Readonly<Record<Caution, string>>
  readonly labels: Readonly<Record<LabelId, string>>
  readonly frame: FrameWords
  readonly decision: DecisionWords
  readonly coupon: CouponWords
  readonly strip: StripWords
  readonly probe: ProbeWords
  readonly kit: KitWords
  readonly foam: FoamWords
  readonly laid: LaidWords
  readonly site: SiteWords
  readonly person: PersonWords
  readonly help: HelpWords
  readonly refusal: RefusalWords
}
