import type { Instant } from '../instant.js'
import { within } from '../physics/range.js'
import { checkCrew, type LastSheetQuestion, lastSheet } from './last-sheet.js'
import { metresOf, type SheetSizes, weldMin } from './work.js'

/** The work that the area hangs on. */
export type Work = 'spray' | 'roll' | 'robot' | 'hand'

export interface Fits {
  readonly areaM2: number
  /** The slowest work: of several gangs the one all wait for, of one the one that takes most of the time. */
  readonly work: Work
}

/**
 * Area that can still be laid, welded and tied in from an instant on until the first of the ends; less the wait of the last sheet,
 * or the backlog where that takes longer. One gang spends on each m² the sum of all works; of several the slowest one counts, the
 * layers having all but the wait, the welders all but the backlog. 0 when there is no time left; null without an end of the
 * window. RangeError as `lastSheet`.
 */
export function whatFits(from: Instant, question: LastSheetQuestion): Fits | null {
  within('from', from, -1e12, 1e12)
  checkCrew(question)
  const close = lastSheet(question)
  if (close === null) return null
  const { crew, sizes, waitMin, backlog } = question
  const leftMin = (close.closeAt - from) / 60 - crew.tieInMin
  const layMin = Math.max(0, leftMin - waitMin)
  const weldersMin = Math.max(0, leftMin - Math.max(waitMin, weldMin(backlog, crew)))
  const takes = minPerM2(crew, sizes)
  const work = slowest(takes)
  if (crew.gangs === 1) return { areaM2: (weldersMin / 60) * paceM2H(crew, sizes), work }
  const areas = { spray: layMin / takes.spray, roll: layMin / takes.roll, robot: over(weldersMin, takes.robot), hand: over(weldersMin, takes.hand) }
  const binding = works.reduce((least, each) => (areas[each] < areas[least] ? each : least))
  return { areaM2: areas[binding], work: areas[binding] === 0 ? work : binding }
}

/** Area laid and welded in an hour of undisturbed work, m²/h: by one gang in turn, by several as fast as the slowest. */
export function paceM2H(crew: LastSheetQuestion['crew'], sizes: SheetSizes): number {
  const { spray, roll, robot, hand } = minPerM2(crew, sizes)
  return 60 / (crew.gangs === 1 ? spray + roll + robot + hand : Math.max(spray, roll, robot, hand))
}

const works = ['spray', 'roll', 'robot', 'hand'] as const satisfies readonly Work[]

/** Minutes that each work takes for a m². */
function minPerM2(crew: LastSheetQuestion['crew'], sizes: SheetSizes): Readonly<Record<Work, number>> {
  const { robotM, handM } = metresOf(1, sizes)
  return { spray: 60 / crew.sprayM2H, roll: 60 / crew.rollM2H, robot: robotM / crew.weldRobotMMin, hand: handM / crew.weldHandMMin }
}

function slowest(takes: Readonly<Record<Work, number>>): Work {
  return works.reduce((most, each) => (takes[each] > takes[most] ? each : most))
}

/** A work that takes no time holds nothing up. */
function over(minutes: number, takesMin: number): number {
  return takesMin > 0 ? minutes / takesMin : Number.POSITIVE_INFINITY
}
