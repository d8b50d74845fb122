import type { LapsedBy } from '../../core/facts.js'
import type {
  BondBreak,
  BondData,
  DetailKind,
  DetailStatus,
  FireData,
  PhotoData,
  ProbeData,
  PunchData,
  RepairData,
  RepairStep,
  SealData,
  SealMethod
} from '../../core/log/closing-data.js'
import type {
  CouponCause,
  CouponData,
  FoamSign,
  KitData,
  LaidData,
  Peel,
  Place,
  ReadingData,
  StatementData,
  VoidCause,
  VoidData,
  VoidOn,
  WelderData,
  WelderEvent
} from '../../core/log/data.js'
import type { EntryType } from '../../core/log/entry.js'
import type { SiteSettings } from '../../core/site.js'

/** Every member that the data of an entry can have: a new one without words does not compile. */
export type MemberName =
  | keyof ReadingData
  | keyof StatementData
  | keyof KitData
  | keyof NonNullable<KitData['foam']>
  | keyof NonNullable<KitData['learned']>
  | keyof NonNullable<StatementData['lead']>
  | keyof CouponData
  | keyof CouponData['conditions']
  | keyof WelderData
  | keyof VoidData
  | keyof LaidData
  | keyof RepairData
  | keyof ProbeData
  | keyof BondData
  | keyof SealData
  | keyof FireData
  | keyof PunchData
  | keyof PhotoData
  | keyof SiteSettings
  | DetailKind
  | 'fire'
  | 'details'
  | 'target'
  | 'data'
  | 'reason'
  | 'activity'
  | 'outcome'
  | 'decision'

/** Every code that the data of an entry can hold as text. */
export type CodeName =
  | Peel
  | CouponCause
  | VoidOn
  | VoidCause
  | FoamSign
  | Place
  | LapsedBy
  | WelderEvent
  | RepairStep
  | BondBreak
  | SealMethod
  | DetailStatus
  | NonNullable<StatementData['compatibility']>
  | NonNullable<StatementData['intakes']>
  | NonNullable<StatementData['sheet']>

export type RecordSection =
  | 'stillOpen'
  | 'summary'
  | 'forecast'
  | 'said'
  | 'decisions'
  | 'kits'
  | 'welds'
  | 'laid'
  | 'voids'
  | 'closing'
  | 'other'
  | 'log'
  | 'proof'
export type RecordColumn =
  | 'time'
  | 'who'
  | 'about'
  | 'what'
  | 'entry'
  | 'activity'
  | 'outcome'
  | 'binds'
  | 'limits'
  | 'type'
  | 'hash'
  | 'number'
  | 'state'
  | 'where'
  | 'day'
  | 'logged'
  | 'via'
  | 'data'
  | 'notes'
export type RecordFact =
  | 'site'
  | 'place'
  | 'roof'
  | 'substrate'
  | 'zone'
  | 'limits'
  | 'entries'
  | 'area'
  | 'welded'
  | 'coupons'
  | 'voids'
  | 'decisions'
  | 'overrides'
  | 'weather'
  | 'anchor'
  | 'madeAt'
  | 'days'

export interface RecordWords {
  title(site: string): string
  packet(site: string): string
  readonly sections: Readonly<Record<RecordSection, string>>
  readonly columns: Readonly<Record<RecordColumn, string>>
  readonly facts: Readonly<Record<RecordFact, string>>
  readonly types: Readonly<Record<EntryType, string>>
  readonly members: Readonly<Record<MemberName, string>>
  readonly codes: Readonly<Record<CodeName, string>>
  readonly yes: string
  readonly no: string
  readonly nothing: string
  readonly nothingOpen: string
  readonly pageWords: readonly [string, string]
  /** "passed 3, failed 1, not judged 0". */
  coupons(passed: number, failed: number, unjudged: number): string
  voids(opened: number, open: number, again: number, passed: number): string
  undone(entry: string): string
  corrected(entry: string): string
  /** Logged well after it happened, or before by a clock that ran back. */
  loggedAt(time: string): string
  override(outcome: string, reason: string): string
  knownAt(time: string): string
  photo(entry: string, time: string): string
  readonly photoMissing: string
  /** How anyone can see that nothing was changed. */
  proof(anchor: string): string
  /** Whose word comes before ours. */
  readonly deferral: string
  /** Of the picture and of the file, for those who do not see it. */
  alt(site: string, date: string, entries: number): string
  altTable(site: string, date: string, rows: number): string
}
