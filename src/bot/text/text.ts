import type { Activity, Group } from '../../core/finding.js'
import type { Fix } from '../../core/fix.js'
import type { Outcome } from '../../core/outcome.js'
import type { ErrorCode, FindingId } from '../answer.js'
import type { AlertWords } from './alert-words.js'
import type { AskedWords } from './asked-words.js'
import type { BeginWords } from './begin-words.js'
import type { ClosingWords } from './closing-words.js'
import type { DayPictureWords } from './day-picture-words.js'
import type { DayWords } from './day-words.js'
import type { ExportWords } from './export-words.js'
import type { FactWords } from './fact-words.js'
import type { FirstWords } from './first-words.js'
import type { GuideWords } from './guide-words.js'
import type { HintWords } from './hint-words.js'
import type { HomeWords } from './home-words.js'
import type { InstallWords } from './install-words.js'
import type { LabelId } from './labels.js'
import type { CouponWords, FoamWords, HelpWords, KitWords, LaidWords, PersonWords, ProbeWords, SiteWords, StripWords } from './part-words.js'
import type { PostWords } from './post-words.js'
import type { RecordWords } from './record-words.js'
import type { ReplayWords } from './replay-words.js'
import type { RoofPictureWords } from './roof-picture-words.js'
import type { RunWords } from './run-words.js'
import type { SheetsWords } from './sheets-words.js'
import type { TakeoffWords } from './takeoff-words.js'
import type { TalkWords } from './talk-words.js'
import type { CommandName, Usages } from './usages.js'
import type { WarmingWords } from './warming-words.js'
import type { WeldWords } from './weld-words.js'
import type { WidthsWords } from './widths-words.js'
import type { YieldWords } from './yield-words.js'

/** `name` goes before a number; `is` says the same without one. */
export interface FindingWords {
  readonly name: string
  readonly is: Readonly<Record<Outcome, string>>
}

/** The usual caution in one line, deferring to local rules. */
export type Caution = 'isocyanates' | 'hotAir' | 'edges' | 'blade' | 'thunder' | 'heat' | 'cold' | 'ice' | 'hurt'

/** Numbers of an answer that are listed by name; the ending is the unit. */
export type NumberName =
  | 'airC'
  | 'rhPct'
  | 'dewPointC'
  | 'frostPointC'
  | 'wetBulbC'
  | 'substrateC'
  | 'dewMarginK'
  | 'kitColdC'
  | 'kitHotC'
  | 'windKmh'
  | 'gustKmh'
  | 'rainChancePct'
  | 'heatIndexC'
  | 'windChillC'
  | 'daylightMin'
  | 'wbgtC'
  | 'openTimeS'
  | 'reachM'
  | 'stopEveryM'
  | 'sheetC'
  | 'dropPct'

interface FrameWords {
  /** How a person's words are quoted. */
  quote(word: string): string
  /** Between a name and what is said of it, with its spaces. */
  readonly colon: string
  readonly no: string
  /** Between the last two of a list. */
  readonly or: string
  more(count: number): string
  logged(ids: string): string
  /** Files that could not be drawn, and the reference of what broke. */
  notDrawn(names: string, ref: string): string
  undo(ids: string): string
  decision(id: string): string
  readonly attribution: Readonly<Record<string, string>>
  from(source: string): string
  issued(at: string): string
  readonly stale: string
  readonly sample: string
  readonly invented: string
  /** No source has a forecast for the place. */
  readonly noForecast: string
  /** No source is asked before a setting is made, which is for whoever runs the bot. */
  forecastLacks(setting: string): string
  limits(id: string, version: number): string
}

interface DecisionWords {
  readonly takeReading: string
  /** A group and what is said of it: \"conditions go\". */
  group(name: string, said: string): string
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
  /** What is missing, in the words that say it. */
  toSayStill(words: string): string
  changes(at: string): string
  readonly closeUp: string
  overridden(reason: string): string
  readonly numbers: Readonly<Record<NumberName, string>>
}

/** What a refusal knows of what went wrong; words of people are quoted and escaped. Null: not said. */
export interface Wrong {
  readonly word: string | null
  readonly label: string | null
  /** What it does not go with. */
  readonly other: string | null
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
  /** As `next` of no site, at the terminal: there a site has no channel to ask in. */
  readonly nameSite: string
  readonly nothingLogged: string
  understood(list: string): string
  nearest(list: string): string
  sites(list: string): string
  readonly who: Readonly<Record<string, string>>
  readonly states: Readonly<Record<string, string>>
}

/** What a crew can mend by saying it: the words to type. */
export type Sayable =
  | Extract<Exclude<Fix, 'state:peel'>, `read:${string}` | `state:${string}`>
  | 'mix:kit'
  | 'weld:coupon'
  | 'test:moisture'
  | 'fit:nozzle'

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
  /** How each command is written, in the words of the language. */
  readonly usages: Usages
  readonly toSay: Readonly<Record<Sayable, string>>
  /** One line each for help. */
  readonly commands: Readonly<Record<CommandName, string>>
  readonly cautions: Readonly<Record<Caution, string>>
  readonly install: InstallWords
  readonly labels: Readonly<Record<LabelId, string>>
  readonly frame: FrameWords
  readonly decision: DecisionWords
  readonly coupon: CouponWords
  readonly weld: WeldWords
  readonly widths: WidthsWords
  readonly strip: StripWords
  readonly sheets: SheetsWords
  readonly probe: ProbeWords
  readonly kit: KitWords
  readonly foam: FoamWords
  readonly laid: LaidWords
  readonly asked: AskedWords
  readonly replay: ReplayWords
  readonly day: DayWords
  readonly run: RunWords
  readonly begin: BeginWords
  readonly closing: ClosingWords
  readonly first: FirstWords
  readonly alerts: AlertWords
  readonly exportWords: ExportWords
  readonly warming: WarmingWords
  readonly yields: YieldWords
  readonly site: SiteWords
  readonly person: PersonWords
  readonly help: HelpWords
  readonly guide: GuideWords
  readonly hints: HintWords
  readonly home: HomeWords
  readonly record: RecordWords
  readonly refusal: RefusalWords
  readonly facts: FactWords
  readonly posts: PostWords
  readonly dayPicture: DayPictureWords
  readonly roofPicture: RoofPictureWords
  readonly takeoff: TakeoffWords
  readonly talk: TalkWords
}
