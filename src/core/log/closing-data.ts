import type { JsonObject } from './entry.js'

/**
 * What the entries of mending and closing up hold in `data`. As in data.ts: these shapes are for ever, members may be added, none
 * renamed. `files` are photos as the chat service names them: each comes as a `photo` entry of its own once its bytes are here.
 */
export type RepairStep = 'lifted' | 'cleaned' | 'dried' | 'reheated' | 'cooled'

export interface RepairData {
  readonly steps?: readonly RepairStep[]
  /** Covered by a patch, not welded again. */
  readonly patched?: true
  readonly files?: readonly string[]
}

export interface ProbeData {
  readonly passed: boolean
  /** Stated cold. */
  readonly cooled?: true
  /** Probed before the repair had cooled, by the log: it says little. */
  readonly warm?: true
  readonly files?: readonly string[]
}

/** Where a test square broke: in the foam with foam on both faces, in the fleece, in the facer below, or off a clean face. */
export type BondBreak = 'foam' | 'fleece' | 'facer' | 'face'

export interface BondData {
  readonly substrate: string
  readonly broke: BondBreak | null
  readonly forceN?: number
  /** Side of the square. */
  readonly squareMm?: number
  /** What the designer wants. */
  readonly wantedN?: number
  readonly uncured?: true
  /** Null: not cured, or not told where it broke. */
  readonly passed: boolean | null
  readonly files?: readonly string[]
}

export type SealMethod = 'tape' | 'foam' | 'mastic' | 'welded' | 'weighed'

export interface SealData {
  /** Metres of open edge that the seal closes; 0: no edge is open. */
  readonly openEdgeM?: number
  readonly method?: SealMethod
  readonly drainsOpen?: boolean
  /** Loose sheets rolled up or weighed down. */
  readonly sheetsSafe?: boolean
  /** Next morning: the seal is cut off. */
  readonly cut?: true
  /** Wet fleece that was cut back. */
  readonly wetM?: number
  readonly by?: string
  readonly files?: readonly string[]
}

/** A `note` with member `fire`. */
export interface FireData {
  /** Heat was used last now. */
  readonly heat?: true
  /** Length of the watch that the permit says. */
  readonly watchMin?: number
  readonly done?: true
  readonly by?: string
}

export const detailKinds = ['corners', 'pipes', 'drains', 'terminations', 'cutEdges', 'tSteps'] as const
export type DetailKind = (typeof detailKinds)[number]
/** `none`: the roof has none of them. */
export type DetailStatus = 'good' | 'bad' | 'none'

/** A `note` with member `details`. */
export type DetailsData = { readonly [K in DetailKind]?: DetailStatus }

/** A `note` of a subject `punch:3`: the first has the text, later ones say done or open again. */
export interface PunchData {
  readonly text?: string
  readonly done?: boolean
  readonly files?: readonly string[]
}

export type PhotoMime = 'image/jpeg' | 'image/png'

export interface PhotoData {
  /** Of the bytes as they came; they are kept once under it. */
  readonly sha256: string
  readonly mime: PhotoMime
  readonly widthPx: number
  readonly heightPx: number
  readonly bytes: number
  /** Its id at the chat service. */
  readonly file: string
}

/** The names of photos in the data of an entry. */
export function filesIn(data: JsonObject): readonly string[] {
  return Array.isArray(data.files) ? data.files.filter((file) => typeof file === 'string') : []
}
