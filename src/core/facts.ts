import type { Fact } from './fact.js'
import type { Instant } from './instant.js'

export type SurfaceState = 'dry' | 'wet' | 'rain' | 'dew'
export type Compatibility = 'compatible' | 'contact' | 'ask'
export type Intakes = 'none' | 'shut' | 'open'
export type SheetState = 'rolled' | 'unrolled' | 'relaxed'
export type LapsedBy =
  | 'failed'
  | 'restart'
  | 'power'
  | 'source'
  | 'lead'
  | 'set'
  | 'speed'
  | 'nozzle'
  | 'roller'
  | 'operator'
  | 'off'
  | 'thickness'
  | 'lot'
  | 'colour'
  | 'old-sheet'
  | 'half-day'
  | 'air'
  | 'sheet'
  | 'wind'
  | 'cloud'
  | 'rain'

/** One welder in use today, as far as a rule needs it. */
export interface WelderFact {
  readonly name: string
  /** `none`: in use, but no judged coupon today. */
  readonly status: 'cleared' | 'failed' | 'lapsed' | 'none'
  readonly lapsedBy: LapsedBy | null
  readonly widthMm: number | null
  readonly at: Instant | null
}

/** Everything the rules may look at, at one instant: in force, aged, with estimates filled in. Built by `gather`. */
export interface Facts {
  readonly at: Instant
  /** Local calendar date of the site, YYYY-MM-DD. */
  readonly today: string
  readonly airC: Fact
  readonly rhPct: Fact
  /** Over water. */
  readonly dewPointC: Fact
  readonly substrateC: Fact
  readonly sheetC: Fact
  /** Substrate minus dew point (frost point where the dew point is below 0 °C). */
  readonly substrateDewMarginK: Fact
  readonly sheetDewMarginK: Fact
  readonly windKmh: Fact
  readonly gustKmh: Fact
  readonly cloudPct: Fact
  readonly heatIndexC: Fact
  /** Wind chill; the air temperature where wind chill is not defined. */
  readonly feltC: Fact
  readonly wbgtC: Fact
  readonly rainFalling: Fact<boolean>
  /** Combined chance until everything open could be closed, %. */
  readonly rainChancePct: Fact
  /** Combined amount until closed up, mm: used only where no chance is known. */
  readonly rainAmountMm: Fact
  readonly sunUp: boolean
  /** Minutes to sunset less the closing-up time; null while the sun does not set. */
  readonly daylightMin: number | null
  readonly substrateDry: Fact<SurfaceState>
  readonly fleeceDry: Fact<SurfaceState>
  readonly seamDry: Fact<SurfaceState>
  readonly substrateClean: Fact<boolean>
  readonly lapClean: Fact<boolean>
  readonly compatibility: Fact<Compatibility>
  readonly intakes: Fact<Intakes>
  readonly substrateKind: string
  /** True: the moisture test of a concrete deck was passed. */
  readonly deckMoisture: Fact<boolean>
  readonly sheetState: Fact<SheetState>
  readonly kit: {
    readonly name: string
    /** Null with `unmixed` true where there is a reading, but of a kit not mixed within the 30 minutes before it. */
    readonly isoC: Fact
    readonly resinC: Fact
    readonly unmixed: boolean
    readonly mixed: Fact<boolean>
    /** YYYY-MM-DD. */
    readonly expiresOn: Fact<string>
    /** Whole days from today to the expiry date; negative once past; null when not known. */
    readonly daysLeft: number | null
  }
  readonly startUp: Readonly<Record<'tight' | 'purged' | 'nozzle' | 'tested', Fact<boolean>>>
  readonly welders: readonly WelderFact[]
  readonly dropPct: Fact
  /** The voltage was measured at the tool. */
  readonly powerMeasured: boolean
  /** Last sheet laid today, and whether the thumb test was stated since. */
  readonly laidAt: Instant | null
  readonly thumbTest: boolean
  readonly thunderHeardAt: Instant | null
  /** A statement of "no thunder" in force. */
  readonly noThunder: Fact<boolean>
  readonly thunderThisHour: boolean | null
  readonly thunderWithin2h: boolean | null
  /** Any surface wet as stated, dewed (margin ≤ 0) or rained on. */
  readonly surfaceWet: Fact<boolean>
}
