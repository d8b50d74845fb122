import type { Point, Polygon, Region } from './polygon.js'

/** Sizes of a sheet and its cover strip, mm. */
export interface SheetSizes {
  readonly widthMm: number
  readonly rollMm: number
  readonly lapMm: number
  readonly endGapMm: number
  readonly stripWidthMm: number
  readonly pastLapMm: number
  readonly cornerRadiusMm: number
  readonly patchFromLayers: number
}

/** The sheets lie with their length along x (courses one above another) or along y (courses side by side from the left). */
export type Along = 'x' | 'y'

/** A sheet as it lies: cut square from a roll, then trimmed to the roof. */
export interface Piece {
  /** From 1, course by course from the low side. */
  readonly number: number
  readonly course: number
  readonly roll: number
  /** Length cut from the roll. */
  readonly cutMm: number
  /** Usually one polygon; more where an opening parts the sheet. */
  readonly region: Region
  readonly areaMm2: number
}

/** The gap between the ends of two sheets of a course. */
export interface Joint {
  readonly course: number
  /** Middle of the gap, along the sheets. */
  readonly atMm: number
  readonly gap: Polygon
  /** Number of the strip over it. */
  readonly strip: number
  /** Farther than the least stagger from the joints of the course below; false where there was no room for it. */
  readonly staggered: boolean
}

/** A cover strip as it lies; over joints in line it is one long strip. */
export interface CoverStrip {
  readonly number: number
  readonly courses: readonly number[]
  readonly atMm: number
  readonly region: Region
  readonly lengthMm: number
  readonly widthMm: number
  /** Width to weld on the worse side of the gap. */
  readonly landMm: number
  readonly cornerRadiusMm: number
  readonly weldPerimeterMm: number
  readonly robotMm: number
  readonly handMm: number
  /** It ends at an edge of the roof or of an opening. */
  readonly edge: boolean
}

/** A patch over pieces stacked `layers` deep or deeper. */
export interface Patch {
  readonly number: number
  readonly layers: number
  readonly at: Point
  readonly region: Region
  readonly weldPerimeterMm: number
}

/** Where the edge of a strip steps over the edge of a lap. */
export interface HandPress {
  readonly strip: number
  readonly at: Point
}

/** Visible edge of a side lap: the low edge of the upper sheet. `course` is the upper one. */
export interface Seam {
  readonly course: number
  readonly from: Point
  readonly to: Point
}

export interface Roll {
  readonly number: number
  /** In the order in which they are cut. */
  readonly cuts: readonly { readonly piece: number; readonly fromMm: number; readonly toMm: number }[]
  readonly leftMm: number
}

/** What is bought and does not come to lie on the roof: the end of a roll, or what was trimmed off a sheet (`piece`). */
export interface Offcut {
  readonly roll: number
  readonly piece: number | null
  readonly areaMm2: number
}

/** A roof laid out. Plain data: everything in mm and mm², points as on the roof. */
export interface Layout {
  /** Openings are its holes. */
  readonly outline: Polygon
  readonly along: Along
  readonly sizes: SheetSizes
  readonly courses: number
  readonly pieces: readonly Piece[]
  readonly seams: readonly Seam[]
  readonly joints: readonly Joint[]
  readonly strips: readonly CoverStrip[]
  readonly patches: readonly Patch[]
  readonly handPress: readonly HandPress[]
  readonly rolls: readonly Roll[]
  /** These pieces cannot be cut from fewer rolls than this, however they are cut. */
  readonly leastRolls: number
  readonly offcuts: readonly Offcut[]
  readonly areaMm2: number
}
