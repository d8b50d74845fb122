import type { Unit } from '../units.js'
import type { LimitName } from './names.js'

/** Bounds in the unit of the sheet that set them: a sheet that says 70–90 °F passes 90 °F exactly. */
export interface Limit {
  readonly unit: Unit
  readonly min: number | null
  readonly max: number | null
  readonly cautionBelow: number | null
  readonly cautionAbove: number | null
  readonly basis: string
}

export type MaxAgeName =
  | 'air'
  | 'rh'
  | 'dew'
  | 'wind'
  | 'gust'
  | 'rain'
  | 'sun'
  | 'substrate'
  | 'substrateNearSunrise'
  | 'sheet'
  | 'kit'
  | 'dry'
  | 'clean'
  | 'lapClean'

export interface Layer {
  readonly thicknessM: number
  readonly rhoKgM3: number
  readonly cJKgK: number
  readonly kWMK: number
}

export interface SubstrateProperties {
  readonly absorptance: number
  readonly emissivity: number
  readonly filmMaxMm: number
  readonly layers: readonly Layer[]
}

/** A limits sheet, resolved: `extends` followed, everything but the limits themselves in metric units. */
export interface LimitsSheet {
  readonly id: string
  readonly version: number
  readonly title: string
  readonly units: 'metric' | 'us'
  /** SHA-256 of the canonical JSON of `resolved`. */
  readonly sha256: string
  /** The sheet as written, with `extends` followed: what is kept by its hash, and read again on replay. */
  readonly resolved: unknown
  readonly limits: Readonly<Record<LimitName, Limit>>
  readonly maxAgeMin: Readonly<Record<MaxAgeName, number>>
  readonly changed: {
    readonly airK: number
    readonly sheetK: number
    readonly windKmh: number
    readonly cloudLowPct: number
    readonly cloudHighPct: number
  }
  readonly spread: {
    readonly airK: number
    readonly rhPct: number
    readonly windKmh: number
    readonly gustKmh: number
    readonly gustEstimatedKmh: number
  }
  readonly sheet: {
    readonly widthM: number
    readonly rollM: number
    readonly lapMm: number
    readonly thicknessMm: number
    readonly endGapMm: number
    readonly relaxMin: number
    readonly relaxColdMin: number
    readonly patchFromLayers: number
  }
  readonly strip: { readonly widthMm: number; readonly pastLapMm: number; readonly cornerRadiusMm: number }
  readonly foam: {
    readonly openTime: readonly { readonly c: number; readonly s: number }[]
    readonly nozzlesPerKit: number
    readonly nozzleGelS: number
    readonly yieldM2PerKit: number
    /** From the last foam of a run to the first sheet on it. */
    readonly handOverS: number
    /** Until what was covered is rolled in. */
    readonly rollInS: number
  }
  readonly kit: {
    readonly radiusM: number
    readonly heightM: number
    readonly rhoKgM3: number
    readonly cJKgK: number
    readonly kWMK: number
    readonly mixing: number
    readonly hWM2K: number
    readonly exposedEnds: number
    readonly expirySoonDays: number
    readonly mixedMaxMin: number
    /** Resistance of the carton a kit stands in, 0…10 m²K/W; 0: none. */
    readonly cartonM2KW: number
  }
  readonly substrates: Readonly<Record<string, SubstrateProperties>>
  readonly site: { readonly closeUpMin: number; readonly minWindowMin: number; readonly heatPlan: boolean }
  readonly power: { readonly volts: number; readonly watts: number }
  readonly crew: CrewPace & CrewRun
  /** What a takeoff reckons by: sizes of sale and rates. */
  readonly takeoff: {
    readonly bareBackRollM: number
    /** Foam against that of a whole cover, by zone. */
    readonly foamFieldPct: number
    readonly foamPerimeterPct: number
    readonly foamCornerPct: number
    readonly foamWastePct: number
    /** Weld that a litre of cleaner is enough for. */
    readonly cleanerMPerL: number
    readonly cleanerCanL: number
    readonly fastenerMm: number
    readonly fastenersPerBox: number
    readonly barM: number
    readonly sheetKgM2: number
    readonly kitKg: number
    /** Ground on which everything staged stands. */
    readonly stagingM2: number
  }
}

/** How fast the crew of a site works: rates of all its gangs together. */
export interface CrewPace {
  /** One gang does everything in turn; several lay and weld at the same time. */
  readonly gangs: number
  readonly sprayM2H: number
  readonly rollM2H: number
  readonly weldRobotMMin: number
  readonly weldHandMMin: number
  readonly tieInMin: number
}

/** How one run of foam goes. */
export interface CrewRun {
  /** How fast the gun moves, and how wide its fan is on the substrate. */
  readonly gunMMin: number
  readonly fanMm: number
  readonly unrollMMin: number
  /** How far the sheet is behind the gun where it follows. */
  readonly lagS: number
}
