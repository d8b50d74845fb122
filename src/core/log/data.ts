import type { Compatibility, Intakes, LapsedBy, SheetState } from '../facts.js'

/**
 * What each type of entry holds in `data`: JSON units, only the members that were said. These shapes are for ever:
 * members may be added, none renamed or given another meaning.
 */
export interface ReadingData {
  readonly airC?: number
  readonly substrateC?: number
  readonly sheetC?: number
  readonly rhPct?: number
  readonly dewPointC?: number
  readonly windKmh?: number
  readonly gustKmh?: number
  readonly sunWm2?: number
}

export interface StatementData {
  readonly rainFalling?: boolean
  readonly rainChancePct?: number
  /** True: heard or seen now. False: none. */
  readonly thunder?: boolean
  readonly substrateDry?: boolean
  readonly fleeceDry?: boolean
  readonly lapDry?: boolean
  readonly substrateClean?: boolean
  readonly lapClean?: boolean
  readonly compatibility?: Compatibility
  readonly intakes?: Intakes
  readonly deckMoisturePassed?: boolean
  readonly sheet?: SheetState
  /** A start-up begins: what was stated of an earlier one counts no more. */
  readonly start?: true
  readonly tight?: boolean
  readonly purged?: boolean
  readonly nozzle?: boolean
  readonly tested?: boolean
  readonly thumbTest?: true
  readonly lead?: { readonly leadM: number; readonly areaMm2: number; readonly volts?: number; readonly watts?: number }
  /** Measured at the tool under load. */
  readonly toolV?: number
}

/** An effective mixing factor, 1…20, and from how many pairs of readings. */
export interface LearnedMixing {
  readonly mixing: number
  readonly pairs: number
}

export type Place = 'box' | 'store' | 'deck'

export interface KitData {
  readonly isoC?: number
  readonly resinC?: number
  readonly mixed?: boolean
  /** YYYY-MM-DD, or `today` and `tomorrow` resolved in the site's zone. */
  readonly expiresOn?: string
  readonly place?: Place
  readonly placeC?: number
  readonly lot?: string
  /** m² laid with it. */
  readonly usedM2?: number
  readonly empty?: true
  /** Left of each part, % of full. */
  readonly isoLeftPct?: number
  readonly resinLeftPct?: number
  /** Told with what is left: by it the parts emptied unevenly. Entries of earlier versions lack it, and stop nothing. */
  readonly offRatio?: boolean
  /** The mixing factor that this reading and those before it say, of all kits of the site. */
  readonly learned?: LearnedMixing
  /** A test spray. */
  readonly foam?: { readonly gelS?: number; readonly signs: readonly FoamSign[]; readonly verdict: FoamVerdict; readonly substrateC?: number }
}

export type FoamSign = 'dark' | 'brittle' | 'soft' | 'tacky' | 'streaks' | 'even' | 'flat'
export type FoamVerdict = 'good' | 'iso-rich' | 'resin-rich' | 'cold' | 'fast' | 'stop'

export type Peel = 'film' | 'parted' | 'scorched' | 'glossy' | 'uneven' | 'wrinkled'
export type CouponCause = 'cold' | 'hot' | 'uneven' | 'narrow'

export interface CouponData {
  readonly widthsMm: readonly number[]
  /** The narrowest. */
  readonly widthMm: number
  readonly peel: Peel | null
  readonly warm?: true
  readonly setC?: number
  readonly speedMMin?: number
  readonly thicknessMm?: number
  /** Of the sheet that it was made of. */
  readonly lot?: string
  readonly colour?: string
  /** Made on the old sheet of a tie-in. */
  readonly old?: true
  /** Cut out of a seam already welded: it tells of that seam, and clears nobody. */
  readonly cut?: true
  /** Operator. */
  readonly by?: string
  /** Null: still warm, or half told. */
  readonly passed: boolean | null
  readonly cause: CouponCause | null
  readonly minWidthMm: number
  /** In force when it was made: a change since lapses the clearance. */
  readonly conditions: {
    readonly airC: number | null
    readonly sheetC: number | null
    readonly windKmh: number | null
    readonly cloudPct: number | null
    /** Which of these nobody read: the forecast or the model says so. Absent: none; entries of earlier versions do not say. */
    readonly estimated?: readonly ('airC' | 'sheetC' | 'windKmh' | 'cloudPct')[]
    /** Stated for the day by then; absent: none was. */
    readonly lead?: NonNullable<StatementData['lead']>
  }
}

/** What happened to a welder, or what was done about its metres on hold: all of them probed, so many released. */
export type WelderEvent = Exclude<LapsedBy, 'failed'> | 'probed' | 'released'

export interface WelderData {
  readonly event: WelderEvent
  readonly setC?: number
  readonly speedMMin?: number
  readonly by?: string
  readonly thicknessMm?: number
  readonly lot?: string
  readonly colour?: string
  /** Released; absent: all. */
  readonly metresM?: number
  /** Of a change of the weather, which speaks of one coupon and no later one. */
  readonly couponAt?: string
}

export type VoidOn = 'lap' | 'end' | 'strip' | 'patch'
export type VoidCause = Peel | 'wet' | 'dirty' | 'cold' | 'foam'

export interface VoidData {
  readonly course: number
  readonly on: VoidOn
  /** Along the course from its start; null when not said. */
  readonly distanceM: number | null
  readonly lengthMm: number
  readonly causes: readonly VoidCause[]
  /** Stated cold when it was probed. */
  readonly cooled?: true
  /** Photos as the chat service names them; each comes as an entry of its own. */
  readonly files?: readonly string[]
}

export interface LaidData {
  readonly areaM2: number
  readonly sheets?: number
  readonly course?: number
  readonly kit?: string
  readonly robotM?: number
  readonly handM?: number
  /** Metres by the names of other welders. */
  readonly othersM?: Readonly<Record<string, number>>
  /** Welders whose clearance the day or the weather had lapsed by then, with the coupon it was of; `by` null: of another day. */
  readonly lapsed?: Readonly<Record<string, { readonly by: LapsedBy | null; readonly couponAt: string }>>
}
