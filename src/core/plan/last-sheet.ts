import type { Instant } from '../instant.js'
import type { CrewPace } from '../limits/sheet.js'
import { above, within } from '../physics/range.js'
import { type Metres, metresOf, rollAreaM2, type SheetSizes, weldMin } from './work.js'

/** What the work must be closed up before: the end of the hours that can go, the closing-up time before sunset, or rain. */
export type Closing = 'window' | 'sunset' | 'rain'

/** What the time after the last sheet goes for: the sheet itself, rolled in and waited for, or what is open besides. */
export type Path = 'sheet' | 'backlog'

export interface LastSheetQuestion {
  /** Null: the day has no such end. */
  readonly ends: Readonly<Record<Closing, Instant | null>>
  /** Metres open before the last sheet, 0…1e6 each. */
  readonly backlog: Metres
  readonly crew: CrewPace
  readonly sizes: SheetSizes
  /** Minutes before a fresh sheet takes a welder, 0…1440. */
  readonly waitMin: number
}

export interface LastSheet {
  /** Whole seconds; may be past: then what is open is to be closed. */
  readonly at: Instant
  /** When everything must be closed, and by what. */
  readonly closeAt: Instant
  readonly closing: Closing
  readonly path: Path
}

/**
 * The latest instant at which a whole sheet may still be in its foam, so that it is rolled in and waited for, welded with the
 * backlog, and tied in by the first of the ends. While a fresh sheet waits the backlog is welded: roll + max(wait, backlog) +
 * its own welds + tie-in. With several gangs the backlog is welded during the rolling too: max(roll + wait, backlog) + its own
 * welds + tie-in, robot and hand at once. Null without an end of the window. RangeError for rates ≤ 0 and what is no number.
 */
export function lastSheet(question: LastSheetQuestion): LastSheet | null {
  checkCrew(question)
  const { crew, sizes, waitMin, backlog } = question
  const close = firstEnd(question.ends)
  if (close === null) return null
  const areaM2 = rollAreaM2(sizes)
  const rollMin = (areaM2 / crew.rollM2H) * 60
  const openMin = weldMin(backlog, crew)
  const together = crew.gangs > 1
  const sheetPathMin = together ? rollMin + waitMin : waitMin
  const beforeWeldsMin = Math.max(sheetPathMin, openMin) + (together ? 0 : rollMin)
  const takesMin = beforeWeldsMin + weldMin(metresOf(areaM2, sizes), crew) + crew.tieInMin
  const path = openMin > sheetPathMin ? 'backlog' : 'sheet'
  return { at: Math.floor(close.at - takesMin * 60), closeAt: close.at, closing: close.closing, path }
}

/** The first of the ends; the window's own where several fall together. */
function firstEnd(ends: LastSheetQuestion['ends']): { readonly at: Instant; readonly closing: Closing } | null {
  if (ends.window === null) return null
  let first: { at: Instant; closing: Closing } = { at: ends.window, closing: 'window' }
  for (const closing of ['sunset', 'rain'] as const) {
    const at = ends[closing]
    if (at !== null && at < first.at) first = { at, closing }
  }
  return first
}

/** Refuses rates that are not above 0 and whatever is no number. */
export function checkCrew({ ends, backlog, crew, waitMin }: LastSheetQuestion): void {
  for (const [name, at] of Object.entries(ends)) if (at !== null) within(name, at, -1e12, 1e12)
  within('robotM', backlog.robotM, 0, 1e6)
  within('handM', backlog.handM, 0, 1e6)
  within('waitMin', waitMin, 0, 1440)
  within('tieInMin', crew.tieInMin, 0, 1440)
  within('gangs', Number.isInteger(crew.gangs) ? crew.gangs : Number.NaN, 1, 20)
  for (const rate of ['sprayM2H', 'rollM2H', 'weldRobotMMin', 'weldHandMMin'] as const) above(rate, crew[rate], 0, 1e6)
}
