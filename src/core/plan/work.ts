import type { CrewPace, LimitsSheet } from '../limits/sheet.js'
import { above, within } from '../physics/range.js'
import { stripSize } from '../sheets/strip.js'

/** Weld metres, by what welds them. */
export interface Metres {
  readonly robotM: number
  readonly handM: number
}

/** What is asked of a sheet: its size and that of the strip over its end joint. */
export type SheetSizes = Pick<LimitsSheet, 'sheet' | 'strip'>

/** Area that a whole roll covers, m²: its length × its width less the lap. */
export function rollAreaM2({ sheet }: Pick<LimitsSheet, 'sheet'>): number {
  return sheet.rollM * coverM(sheet)
}

function coverM({ widthM, lapMm }: LimitsSheet['sheet']): number {
  const cover = widthM - lapMm / 1000
  above('coverM', cover, 0, 1000)
  return cover
}

/**
 * Weld metres that an area laid (0…1e6 m²) takes: one side lap along each sheet, by robot, and one strip all round for each roll
 * length, as the strip parts into robot and hand. A little too many, since the last sheet of a course has no joint at its end.
 * Geometry, no source. RangeError outside.
 */
export function metresOf(areaM2: number, sizes: SheetSizes): Metres {
  within('areaM2', areaM2, 0, 1e6)
  const strip = stripOf(sizes)
  const rolls = areaM2 / rollAreaM2(sizes)
  return { robotM: areaM2 / coverM(sizes.sheet) + (rolls * strip.robotMm) / 1000, handM: (rolls * strip.handMm) / 1000 }
}

function stripOf({ sheet, strip }: SheetSizes) {
  const { widthM, lapMm, endGapMm } = sheet
  const { widthMm: stripWidthMm, pastLapMm, cornerRadiusMm } = strip
  return stripSize({ widthM, sheets: 1, gapMm: endGapMm, offMm: 0, edgeMm: null, lapMm, pastLapMm, stripWidthMm, cornerRadiusMm })
}

/** Metres of the area laid that were not said to be welded; what one welder did too much of does not count for the other. */
export function backlogOf(laid: { readonly areaM2: number } & Metres, sizes: SheetSizes): Metres {
  within('robotM', laid.robotM, 0, 1e9)
  within('handM', laid.handM, 0, 1e9)
  const all = metresOf(laid.areaM2, sizes)
  return { robotM: Math.max(0, all.robotM - laid.robotM), handM: Math.max(0, all.handM - laid.handM) }
}

/** Minutes to weld some metres: robot and hand one after the other by one gang, at once by several. */
export function weldMin({ robotM, handM }: Metres, crew: CrewPace): number {
  const [robotMin, handMin] = [robotM / crew.weldRobotMMin, handM / crew.weldHandMMin]
  return crew.gangs > 1 ? Math.max(robotMin, handMin) : robotMin + handMin
}
