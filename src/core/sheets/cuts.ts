import { snapped } from './clip.js'
import { grouped } from './grouped.js'
import type { SheetSizes } from './layout.js'
import type { Span } from './spans.js'
import { merged } from './spans.js'

/** A stretch of a course to lay, and where no joint should be, from what matters most to what may give way first. */
export interface Stretch {
  readonly course: number
  readonly fromMm: number
  readonly toMm: number
  /** Beside edges that run with the joint, where a strip would have too little land. */
  readonly narrow: readonly Span[]
  /** Beside every edge steeper than half a right angle to the course. */
  readonly wide: readonly Span[]
}

export interface PlannedSheet {
  readonly stretch: number
  readonly fromMm: number
  readonly toMm: number
  /** Index of the roll. */
  readonly roll: number
}

export interface PlannedJoint {
  readonly stretch: number
  readonly atMm: number
  readonly staggered: boolean
}

export interface Plan {
  readonly sheets: readonly PlannedSheet[]
  readonly joints: readonly PlannedJoint[]
  readonly rolls: number
}

/** `offcuts`: what is left of a roll begins the next course. `full`: whole rolls first, from either side in turn. */
export type Order = 'offcuts' | 'full'

/** Between the joints of neighbouring courses at least this. From memory, as the least practice. */
const leastStaggerMm = 300

/** No sheet of a joined course is shorter: two strips need room beside each other. Invented. */
const leastSheetMm = 1000

type Lengths = Pick<SheetSizes, 'rollMm' | 'endGapMm'>

interface Left {
  readonly roll: number
  readonly mm: number
}

/** What changes while a roof is planned: rolls begun, what is left of them by length, the sheets and joints so far. */
interface Bench {
  readonly order: Order
  readonly lengths: Lengths
  readonly least: number
  rolls: number
  readonly left: Left[]
  readonly sheets: PlannedSheet[]
  readonly joints: PlannedJoint[]
  /** Joints of the course below. */
  below: readonly Span[]
}

/** Cuts stretches (in the order of their courses) into sheets of a roll's length at most, ends staggered, offcuts used again. */
export function planCuts(stretches: readonly Stretch[], lengths: Lengths, order: Order): Plan {
  const least = Math.min(leastSheetMm, lengths.rollMm / 3)
  const bench: Bench = { order, lengths, least, rolls: 0, left: [], sheets: [], joints: [], below: [] }
  const byCourse = grouped(stretches.keys(), (i) => (stretches[i] as Stretch).course)
  for (const [course, ones] of byCourse) {
    const before = bench.joints.length
    for (const i of ones) cutStretch(bench, stretches[i] as Stretch, i, order === 'full' && course % 2 === 0)
    bench.below = merged(bench.joints.slice(before).map(({ atMm }) => [atMm - leastStaggerMm, atMm + leastStaggerMm]))
  }
  return { sheets: bench.sheets, joints: bench.joints, rolls: bench.rolls }
}

/** From one end to the other; `back`: from the far end. Each turn lays at least the least sheet or ends. */
function cutStretch(bench: Bench, stretch: Stretch, index: number, back: boolean): void {
  const sign = back ? -1 : 1
  const [start, end] = back ? [-stretch.toMm, -stretch.fromMm] : [stretch.fromMm, stretch.toMm]
  const barred = barredOf(stretch, bench.below).map((spans) => (back ? mirrored(spans) : spans))
  const put = (from: number, to: number, roll: number) => {
    const [fromMm, toMm] = back ? [-to, -from] : [from, to]
    bench.sheets.push({ stretch: index, fromMm, toMm, roll })
  }
  let at = start
  for (;;) {
    const rest = takeLeft(bench, end - at) ?? (end - at <= bench.lengths.rollMm ? begin(bench) : null)
    if (rest !== null) {
      put(at, end, rest.roll)
      keep(bench, rest, end - at)
      return
    }
    const { from, joint, staggered } = nextJoint(bench, at, end, barred)
    const to = joint - bench.lengths.endGapMm / 2
    put(at, to, from.roll)
    keep(bench, from, to - at)
    bench.joints.push({ stretch: index, atMm: sign * joint, staggered })
    at = joint + bench.lengths.endGapMm / 2
  }
}

/** Where no joint may be, from the strictest to none. */
function barredOf({ narrow, wide }: Stretch, below: readonly Span[]): readonly (readonly Span[])[] {
  return [merged([...wide, ...below]), merged([...narrow, ...below]), narrow, []]
}

function mirrored(spans: readonly Span[]): readonly Span[] {
  return spans.map(([from, to]): Span => [-to, -from]).reverse()
}

/** The next sheet: of the longest offcut where that gives a good joint, else of a new roll, with the best joint there is. */
function nextJoint(bench: Bench, at: number, end: number, barred: readonly (readonly Span[])[]): { from: Left; joint: number; staggered: boolean } {
  const longest = bench.order === 'offcuts' ? bench.left.at(-1) : undefined
  if (longest !== undefined && longest.mm >= bench.least) {
    const joint = lastFree(bench, at, end, longest.mm, barred[0] as readonly Span[])
    if (joint !== null) {
      bench.left.pop()
      return { from: longest, joint, staggered: true }
    }
  }
  const from = begin(bench)
  for (const [level, spans] of barred.entries()) {
    const joint = lastFree(bench, at, end, from.mm, spans)
    if (joint !== null) return { from, joint, staggered: level < 2 }
  }
  throw new RangeError(`no joint between ${at} and ${end} mm`)
}

/** The farthest place of a joint that a length reaches, that leaves a sheet's least length behind it and is not barred. */
function lastFree({ lengths, least }: Bench, at: number, end: number, lengthMm: number, barred: readonly Span[]): number | null {
  const half = lengths.endGapMm / 2
  const first = at + least + half
  let joint = Math.min(at + lengthMm + half, end - least - half)
  for (let i = barred.length - 1; i >= 0; i -= 1) {
    const [from, to] = barred[i] as Span
    if (from < joint && joint < to) joint = from
  }
  return joint >= first ? snapped(joint) : null
}

/** The shortest offcut that is long enough; null when none is. */
function takeLeft({ left }: Bench, mm: number): Left | null {
  const i = place(left, mm)
  return left.splice(i, 1)[0] ?? null
}

function begin(bench: Bench): Left {
  bench.rolls += 1
  return { roll: bench.rolls - 1, mm: bench.lengths.rollMm }
}

function keep({ left }: Bench, { roll, mm }: Left, usedMm: number): void {
  const rest = mm - usedMm
  if (rest > 0) left.splice(place(left, rest), 0, { roll, mm: rest })
}

/** First place in a list by length where one of so many mm or more stands. */
function place(left: readonly Left[], mm: number): number {
  let [low, high] = [0, left.length]
  while (low < high) {
    const half = (low + high) >> 1
    if ((left[half] as Left).mm >= mm) high = half
    else low = half + 1
  }
  return low
}
