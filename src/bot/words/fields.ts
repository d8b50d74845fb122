import type { BondBreak, DetailKind, DetailStatus, FireData, RepairStep, SealData } from '../../core/log/closing-data.js'
import type { FoamSign, KitData, Peel, ReadingData, StatementData, VoidCause, VoidOn, WelderData } from '../../core/log/data.js'
import type { CornerName } from '../../core/sheets/outline.js'
import type { ZoneStandardName } from '../../core/sheets/zones/index.js'
import type { PersonRole } from '../answer.js'
import type { CornerSaid, DayPart, SiteChange } from './said.js'
import type { Quantity } from './unit.js'

type Writable<T> = { -readonly [Key in keyof T]?: T[Key] }

interface WeldFields {
  welder: string
  widthsMm: number[]
  peel: Peel
  warm: boolean
  setC: number
  speedMMin: number
  thicknessMm: number
  by: string
  operator: string
  colour: string
  old: true
  cut: true
  chart: true
  releasedM: number
  event: WelderData['event']
}

interface SheetFields {
  widthM: number
  gapMm: number
  offMm: number
  edgeMm: number
  sheets: number
  rollM: number
  times: number
  picture: true
  areaM2: number
  robotM: number
  handM: number
  othersM: Readonly<Record<string, number>>
}

interface NotchSaid {
  readonly corner: CornerName
  readonly widthMm: number
  readonly depthMm: number
  readonly word: string
}

interface RoofFields {
  size: { readonly widthMm: number; readonly depthMm: number; readonly word: string }
  corners: readonly CornerSaid[]
  notches: readonly NotchSaid[]
  openings: readonly (readonly CornerSaid[])[]
  along: 'x' | 'y'
  heightM: number
  standard: ZoneStandardName
  lapMm: number
}

interface ProbeFields {
  course: number
  on: VoidOn
  distanceM: number
  lengthMm: number
  causes: VoidCause[]
  /** Numbers without a unit: a length, or the number of a void. */
  bare: Quantity[]
  void: number
  step: 'fixed' | 'passed' | 'failed'
  list: true
}

interface ClosingFields {
  /** Ids of photos at the chat service. */
  files: string[]
  steps: RepairStep[]
  cooled: true
  broke: BondBreak
  cured: boolean
  forceN: number
  wantedN: number
  squareMm: number
  details: { readonly [K in DetailKind]?: DetailStatus | 'named' }
  verdict: 'good' | 'bad'
  allDetails: true
  punch: number
  punchDone: boolean
}

interface OtherFields {
  kitName: string
  gelS: number
  signs: FoamSign[]
  siteName: string
  siteNew: true
  person: string
  role: PersonRole
  summary: boolean
  ids: string[]
  about: string
  /** YYYY-MM-DD. */
  date: string
  /** ISO, 1 Monday. */
  weekday: number
  dayPart: DayPart
}

/** Everything that any word of any command can set, in JSON units; a message sets some of it. */
export type Fields = Writable<
  ReadingData &
    StatementData &
    Omit<KitData, 'foam'> &
    SiteChange &
    WeldFields &
    SheetFields &
    RoofFields &
    ProbeFields &
    ClosingFields &
    Omit<SealData, 'files'> &
    FireData &
    OtherFields
>

/** The fields that hold a number. */
export type NumberKey = { [Key in keyof Fields]-?: number extends Fields[Key] ? Key : never }[keyof Fields]

/** The named fields that were set, and no others: for shapes that hold only what was said. */
export function picked<Key extends keyof Fields>(fields: Fields, keys: readonly Key[]): { [K in Key]?: Exclude<Fields[K], undefined> } {
  return Object.fromEntries(keys.filter((key) => fields[key] !== undefined).map((key) => [key, fields[key]])) as {
    [K in Key]?: Exclude<Fields[K], undefined>
  }
}
