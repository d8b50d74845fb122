import type { Instant } from '../../core/instant.js'
import type { BondData, DetailsData, FireData, RepairStep, SealData } from '../../core/log/closing-data.js'
import type { CouponData, FoamSign, KitData, LaidData, Peel, ReadingData, StatementData, VoidData, WelderData } from '../../core/log/data.js'
import type { Point } from '../../core/sheets/polygon.js'
import type { ZoneStandardName } from '../../core/sheets/zones/index.js'
import type { Lang, PersonRole, Refusal, Understood, Units } from '../answer.js'
import type { Asks } from '../topics.js'

/** A message, wholly understood: JSON units, the shapes of the log's entries. One variant a thing a person can ask. */
export type Said =
  | { readonly command: 'spray'; readonly reading: ReadingData; readonly statement: StatementData; readonly kit: KitSaid | null }
  | { readonly command: 'spray override'; readonly reason: string }
  | { readonly command: 'air'; readonly reading: ReadingData; readonly statement: StatementData }
  | { readonly command: 'weld'; readonly reading: ReadingData; readonly statement: StatementData }
  | { readonly command: 'weld coupon'; readonly welder: string; readonly coupon: CouponSaid }
  /** `lead`: the new one, where it was told with the change. */
  | { readonly command: 'weld event'; readonly welder: string; readonly event: WelderData; readonly lead?: NonNullable<StatementData['lead']> }
  | { readonly command: 'weld chart'; readonly welder: string }
  | { readonly command: 'weld show'; readonly welder: string }
  | { readonly command: 'strip'; readonly strip: StripSaid }
  | { readonly command: 'sheets'; readonly sheets: SheetsSaid }
  | { readonly command: 'probe open'; readonly found: VoidData }
  | ({ readonly command: 'probe step'; readonly number: number; readonly step: 'fixed' | 'passed' | 'failed' } & StepSaid)
  | { readonly command: 'probe photo'; readonly number: number; readonly files: readonly string[] }
  | { readonly command: 'probe list' }
  /** `about`: the kit that was asked about, of which nothing was said. */
  | { readonly command: 'kit'; readonly kit: KitSaid | null; readonly about?: string }
  | { readonly command: 'foam'; readonly gelS: number | null; readonly signs: readonly FoamSign[] }
  /** Null, or nothing said: what is known is shown. */
  | { readonly command: 'bond'; readonly bond: BondSaid | null }
  | { readonly command: 'seal'; readonly seal: SealData }
  | { readonly command: 'fire'; readonly fire: FireData }
  | { readonly command: 'detail'; readonly details: DetailsData; readonly files: readonly string[] }
  | { readonly command: 'punch add'; readonly text: string; readonly files: readonly string[] }
  | { readonly command: 'punch step'; readonly number: number; readonly done: boolean | null; readonly files: readonly string[] }
  | { readonly command: 'punch list' }
  | { readonly command: 'laid'; readonly laid: LaidData }
  /** Date null: today. */
  | { readonly command: 'day'; readonly date: string | null }
  | { readonly command: 'day start' }
  | { readonly command: 'day record'; readonly part: Exclude<DayPart, 'start'>; readonly date: string | null }
  | { readonly command: 'site show'; readonly name: string | null }
  | { readonly command: 'site set'; readonly name: string | null; readonly change: SiteChange }
  | { readonly command: 'site new'; readonly name: string; readonly lat: number; readonly lon: number; readonly zone: string }
  /** Site null: how to begin is asked. */
  | { readonly command: 'start'; readonly site: SiteBegun | null }
  /** Role null: what it is; person null: who the supervisors are. */
  | { readonly command: 'role'; readonly person: string | null; readonly role: PersonRole | null }
  | { readonly command: 'help'; readonly about: string | null }
  | { readonly command: 'me'; readonly lang: Lang | null; readonly units: Units | null; readonly summary: boolean | null }
  | { readonly command: 'undo'; readonly ids: readonly string[] }
  | { readonly command: 'correct'; readonly id: string; readonly words: string }

/** What a step of a void was said with. */
export interface StepSaid {
  readonly steps?: readonly RepairStep[]
  readonly patched?: true
  /** Stated cold. */
  readonly cooled?: true
  readonly files?: readonly string[]
}

/** Substrate null: the site's. */
export type BondSaid = Pick<BondData, 'broke' | 'forceN' | 'squareMm' | 'wantedN' | 'files'> & {
  readonly substrate: string | null
  readonly cured: boolean
}
/** What of a day is asked for beside its hours. */
export type DayPart = 'start' | 'record' | 'csv'

/** Name null: the kit last named, else K1. */
export interface KitSaid {
  readonly name: string | null
  readonly data: Omit<KitData, 'foam'>
}

export type CouponSaid = Pick<CouponData, 'widthsMm' | 'setC' | 'speedMMin' | 'thicknessMm' | 'lot' | 'colour' | 'old' | 'cut' | 'by'> & {
  readonly peel: Peel | null
  readonly warm: boolean
}

export interface StripSaid {
  readonly widthM: number
  readonly gapMm: number | null
  readonly offMm: number | null
  /** Run to the edge or upstand, mm: an edge sheet. */
  readonly edgeMm: number | null
  readonly sheets: number | null
  readonly rollM: number | null
  /** `x4`: how many strips. */
  readonly times: number | null
  /** It is to be drawn, where nobody would see it otherwise. */
  readonly picture?: true
}

/** A corner of an outline, mm, and the words that placed it. */
export interface CornerSaid {
  readonly at: Point
  readonly word: string
}

export interface OutlineSaid {
  readonly outer: readonly CornerSaid[]
  readonly openings: readonly (readonly CornerSaid[])[]
}

/** What is not said is null: the outline is then the site's roof, sizes are the limits sheet's. */
export interface SheetsSaid {
  readonly outline: OutlineSaid | null
  readonly along: 'x' | 'y' | null
  readonly heightM: number | null
  readonly zones: ZoneStandardName | null
  readonly widthM: number | null
  readonly lapMm: number | null
  readonly rollM: number | null
}

/** Settings to change, by the keys of SiteSettings, as far as a person may set them. */
export interface SiteChange {
  readonly units?: Units
  readonly lang?: Lang
  readonly posts?: readonly string[]
  readonly morning?: string
  readonly evening?: string
  readonly days?: readonly number[]
  readonly hours?: string
  readonly limits?: string
  readonly substrate?: string
  readonly channel?: string | null
  readonly zone?: string
  readonly lat?: number
  readonly lon?: number
  readonly closed?: boolean
}

/** A site to be made, with what is to be set for it. */
export interface SiteBegun {
  readonly name: string
  readonly lat: number
  readonly lon: number
  readonly zone: string
  readonly change: SiteChange
}

/** Who asks, as far as reading the words needs it. */
export interface Reader {
  /** Whose words are offered for one that is not known; absent: anybody's. */
  readonly lang?: Lang
  readonly units: Units
  /** Zone of the site, for `@07:30`, `today` and `tomorrow`. */
  readonly zone: string
  readonly now: Instant
}

export type Reading =
  | { readonly ok: true; readonly said: Said; readonly at: Instant | null; readonly understood: readonly Understood[]; readonly asks?: Asks }
  | { readonly ok: false; readonly command: string | null; readonly refusal: Refusal }
