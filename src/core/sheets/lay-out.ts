import { type Bands, bandsOf, type Run } from './bands.js'
import { coverStrips, type Gap } from './cover-strips.js'
import { type Order, type Plan, type PlannedSheet, planCuts, type Stretch } from './cuts.js'
import { grouped } from './grouped.js'
import { handPressed } from './hand-press.js'
import type { Along, Layout, Offcut, Piece, Roll, Seam, SheetSizes } from './layout.js'
import { onPlan } from './on-plan.js'
import { patchesOver } from './patches.js'
import { partsOf } from './pieces.js'
import { type Polygon, polygonAreaMm2, regionAreaMm2, turned } from './polygon.js'
import { repacked } from './repack.js'
import { type Laps, lapsOf } from './seams.js'
import type { Span } from './spans.js'
import { besideEdges, steepEdges } from './steep.js'

/** One way to lay a roof, planned but not drawn. */
interface Way {
  readonly along: Along
  readonly outline: Polygon
  readonly bands: Bands
  readonly plan: Plan
}

/**
 * Lays sheets on a roof: courses from the low side (smallest y along x, smallest x along y), in the direction told or the better of
 * both, by fewer rolls, then fewer joints, then fewer courses. The outline is checked (`outlineProblem`), the sizes are
 * (`sizesProblem`); a direction in which the sheet is wider than the roof is not taken. Null when none is left.
 * Geometry and common practice, no source.
 */
export function layOut(outline: Polygon, sizes: SheetSizes, along: Along | null): Layout | null {
  const ways = (['x', 'y'] as const).filter((one) => along === null || along === one).flatMap((one) => waysAlong(one, outline, sizes))
  const [first, ...others] = ways
  return first === undefined ? null : drawn(others.reduce(better, first), outline, sizes)
}

function waysAlong(along: Along, outline: Polygon, sizes: SheetSizes): readonly Way[] {
  const turnedOutline = along === 'x' ? outline : turned(outline)
  const ys = turnedOutline.outer.map(([, y]) => y)
  if (Math.max(...ys) - Math.min(...ys) < sizes.widthMm) return []
  const bands = bandsOf(turnedOutline, sizes)
  const stretches = bands.runs.map((run) => stretchOf(run, sizes))
  return (['offcuts', 'full'] as const).map((order: Order) => ({ along, outline: turnedOutline, bands, plan: planCuts(stretches, sizes, order) }))
}

function stretchOf({ course, fromMm, toMm, polygon }: Run, { stripWidthMm }: SheetSizes): Stretch {
  const edges = steepEdges(polygon)
  const reach = stripWidthMm / 2 + 5
  const upright = edges.filter((edge) => edge.toX - edge.fromX < stripWidthMm)
  return { course, fromMm, toMm, narrow: besideEdges(upright, reach), wide: besideEdges(edges, reach) }
}

function better(a: Way, b: Way): Way {
  const order = a.plan.rolls - b.plan.rolls || a.plan.joints.length - b.plan.joints.length || a.bands.count - b.bands.count
  return order <= 0 ? a : b
}

function drawn({ along, outline, bands, plan: first }: Way, asGiven: Polygon, sizes: SheetSizes): Layout {
  const { plan, leastRolls } = repacked(first, sizes)
  const laps = lapsOf(outline, bands)
  const { pieces, rolls, offcuts } = piecesOf(bands, plan, sizes)
  const gaps = gapsOf(bands, plan, sizes)
  const bodies = coverStrips(gaps, bands.runs, sizes)
  const strips = bodies.map(({ gaps: _, ...body }, i) => ({ number: i + 1, ...body }))
  const stripOf = new Map(bodies.flatMap((body, i) => body.gaps.map((gap) => [gap, i + 1] as const)))
  const joints = gaps.map(({ course, atMm, polygon, staggered }, i) => ({ course, atMm, gap: polygon, strip: stripOf.get(i) as number, staggered }))
  const patches = patchesOver({ strips, laps, runs: bands.runs, lowsMm: bands.lowsMm }, sizes).map((patch, i) => ({ number: i + 1, ...patch }))
  const handPress = handPressed(strips, laps, bands.lowsMm)
  const areaMm2 = polygonAreaMm2(asGiven)
  const body = { pieces, seams: seamsOf(laps, bands), joints, strips, patches, handPress }
  return { outline: asGiven, along, sizes, courses: bands.count, ...onPlan(body, along), rolls, leastRolls, offcuts, areaMm2 }
}

type Drawn = Pick<Layout, 'pieces' | 'rolls' | 'offcuts'>

function piecesOf({ runs }: Bands, { sheets, rolls: count }: Plan, { widthMm, rollMm }: SheetSizes): Drawn {
  const parts = new Map<PlannedSheet, Piece['region']>()
  const byRun = grouped(sheets, ({ stretch }) => stretch)
  for (const [i, run] of runs.entries()) {
    const ones = byRun.get(i) ?? []
    const regions = partsOf(
      run,
      ones.map(({ fromMm, toMm }): Span => [fromMm, toMm])
    )
    for (const [j, one] of ones.entries()) parts.set(one, regions[j] as Piece['region'])
  }
  const cuts = Array.from({ length: count }, (): Roll['cuts'][number][] => [])
  const pieces = sheets.map((sheet, i): Piece => {
    const cutMm = sheet.toMm - sheet.fromMm
    const roll = cuts[sheet.roll] as Roll['cuts'][number][]
    const fromMm = roll.at(-1)?.toMm ?? 0
    roll.push({ piece: i + 1, fromMm, toMm: fromMm + cutMm })
    const region = parts.get(sheet) as Piece['region']
    return { number: i + 1, course: (runs[sheet.stretch] as Run).course, roll: sheet.roll + 1, cutMm, region, areaMm2: regionAreaMm2(region) }
  })
  const rolls = cuts.map((ones, i): Roll => ({ number: i + 1, cuts: ones, leftMm: Math.max(0, rollMm - (ones.at(-1)?.toMm ?? 0)) }))
  const ends = rolls.map(({ number, leftMm }): Offcut => ({ roll: number, piece: null, areaMm2: leftMm * widthMm }))
  const trims = pieces.map(({ number, roll, cutMm, areaMm2 }): Offcut => ({ roll, piece: number, areaMm2: Math.max(0, cutMm * widthMm - areaMm2) }))
  return { pieces, rolls, offcuts: [...ends, ...trims].filter(({ areaMm2 }) => areaMm2 > 0.01) }
}

function gapsOf({ runs }: Bands, { joints }: Plan, { endGapMm }: SheetSizes): readonly (Gap & { readonly staggered: boolean })[] {
  const byRun = grouped(joints, ({ stretch }) => stretch)
  return runs.flatMap((run, i) => {
    const ones = [...(byRun.get(i) ?? [])].sort((a, b) => a.atMm - b.atMm)
    const regions = partsOf(
      run,
      ones.map(({ atMm }): Span => [atMm - endGapMm / 2, atMm + endGapMm / 2])
    )
    return ones.flatMap(({ atMm, staggered }, j) => (regions[j] ?? []).map((polygon) => ({ course: run.course, atMm, polygon, staggered })))
  })
}

function seamsOf({ seams }: Laps, { lowsMm }: Bands): readonly Seam[] {
  return [...seams].flatMap(([course, spans]) => {
    const y = lowsMm[course - 1] as number
    return spans.map(([from, to]): Seam => ({ course, from: [from, y], to: [to, y] }))
  })
}
