import type { Layout } from '../../../src/core/sheets/layout.js'
import { area, both, box, collected, type Extent, extent, less, meets, partsOf, type Shape, shape, shapes, unionOf } from './overlay.js'

/**
 * What is wrong with a layout, seen by an overlay of its pieces alone: empty when everything holds. Rounding: 1 mm² in all for areas.
 */
export function faultsOf(layout: Layout): readonly string[] {
  const seen = seenOf(layout)
  return [
    ...outside(seen),
    ...uncovered(seen),
    ...joints(seen, layout),
    ...stacks(seen, layout),
    ...areas(seen, layout),
    ...rolls(seen, layout),
    ...stagger(layout)
  ]
}

interface Seen {
  readonly roof: Shape
  readonly sheets: readonly Shape[]
  readonly strips: readonly Shape[]
  readonly patches: readonly Shape[]
  readonly allSheets: Shape
  readonly allStrips: Shape
  /** Of the roof what no sheet covers. */
  readonly bare: Shape
}

const slackMm2 = 1

function seenOf(layout: Layout): Seen {
  const sheets = layout.pieces.flatMap(({ region }) => shapes(region))
  const strips = layout.strips.flatMap(({ region }) => shapes(region))
  const patches = layout.patches.flatMap(({ region }) => shapes(region))
  const roof = shape(layout.outline)
  const allSheets = unionOf(sheets)
  return { roof, sheets, strips, patches, allSheets, allStrips: unionOf(strips), bare: less(roof, allSheets) }
}

function outside({ roof, allSheets, allStrips, patches }: Seen): readonly string[] {
  const over = [allSheets, allStrips, unionOf(patches)].reduce((sum, one) => sum + area(less(one, roof)), 0)
  return over <= slackMm2 ? [] : [`${over} mm² outside the outline`]
}

function uncovered({ allStrips, bare }: Seen): readonly string[] {
  const open = area(less(bare, allStrips))
  return open <= slackMm2 ? [] : [`${open} mm² not covered`]
}

/** Every place between sheets is a joint that is told, no wider than the gap, and a strip with its land lies over each. */
function joints({ roof, bare, allStrips }: Seen, layout: Layout): readonly string[] {
  const half = layout.sizes.endGapMm / 2
  const told = layout.joints.map(({ gap, atMm }) => {
    const { low, high } = axes(extent(shape(gap)), layout)
    return { gap: shape(gap), atMm, low, high }
  })
  const boxes = told.map(({ atMm, low, high }) => boxOn(layout, atMm - half - 0.01, atMm + half + 0.01, low - 0.01, high + 0.01))
  const others = area(less(bare, unionOf(boxes)))
  return [
    ...(others <= slackMm2 ? [] : [`${others} mm² between sheets where no joint is told`]),
    ...told.flatMap((joint) => landFaults(joint, roof, allStrips, layout))
  ]
}

interface ToldJoint {
  readonly gap: Shape
  readonly atMm: number
  readonly low: number
  readonly high: number
}

function landFaults({ gap, atMm, low, high }: ToldJoint, roof: Shape, allStrips: Shape, layout: Layout): readonly string[] {
  const { stripWidthMm, endGapMm } = layout.sizes
  const reach = stripWidthMm / 2 - 0.01
  const reached = partsOf(both(roof, boxOn(layout, atMm - reach, atMm + reach, low, high)))
  const own = reached.filter((part) => area(both(part, gap)) > 0.5 * Math.min(part.getArea(), gap.getArea()))
  const bare = own.reduce((sum, part) => sum + area(less(part, allStrips)), 0)
  const faults = own.length > 0 && bare <= slackMm2 ? [] : [`${bare} mm² beside the gap at ${atMm} without a strip`]
  const strip = layout.strips.find((one) => Math.abs(one.atMm - atMm) < 1e-6 && one.region.some((part) => meets(extent(shape(part)), extent(gap))))
  if (strip === undefined) return [...faults, `no strip over the gap at ${atMm}`]
  // Slanted ends take some of the strip away: what counts is the joint between them.
  const end = stripWidthMm / 2 + 5
  if (!(high - end > low + end)) return faults
  const land = endGapMm / 2 + strip.landMm - 0.01
  const lost = area(less(boxOn(layout, atMm - land, atMm + land, low + end, high - end), roof))
  return lost <= slackMm2 ? faults : [...faults, `${lost} mm² of the land at ${atMm} off the roof`]
}

/** Patches cover every place `patchFromLayers` deep. Two sheets at most lie over each other, `areas` shows it: the others must be strips. */
function stacks({ sheets, strips, patches }: Seen, layout: Layout): readonly string[] {
  const layers = layout.sizes.patchFromLayers
  const all = [...sheets, ...strips].map((one) => ({ one, at: extent(one) }))
  const under = patches.length === 0 ? null : unionOf(patches)
  return strips.flatMap((strip) => {
    const at = extent(strip)
    const near = all.filter((other) => other.one !== strip && meets(at, other.at))
    if (near.filter(({ one }) => strips.includes(one)).length < layers - 3) return []
    const others = near.map(({ one }) => both(one, strip))
    const depths: (Shape | null)[] = Array.from({ length: layers - 1 }, () => null)
    for (const other of others) {
      for (let d = layers - 2; d > 0; d -= 1) {
        const below = depths[d - 1] ?? null
        if (below !== null) depths[d] = joined(depths[d] ?? null, both(below, other))
      }
      depths[0] = joined(depths[0] ?? null, other)
    }
    const deep = depths[layers - 2] ?? null
    if (deep === null) return []
    const bare = under === null ? area(deep) : area(less(deep, under))
    return bare <= slackMm2 ? [] : [`${bare} mm² of ${layers} layers without a patch`]
  })
}

function joined(a: Shape | null, b: Shape): Shape {
  return a === null ? b : unionOf([...partsOf(a), ...partsOf(b)])
}

/** sheets − laps + gaps = roof, and sheets + offcuts = bought, each to 1 mm². */
function areas({ roof, sheets, bare }: Seen, layout: Layout): readonly string[] {
  const laid = sheets.reduce((sum, one) => sum + one.getArea(), 0)
  const gaps = area(bare)
  const net = laid - lapsOf(sheets) + gaps - roof.getArea()
  const { rollMm, widthMm } = layout.sizes
  const bought = layout.rolls.length * rollMm * widthMm
  const offcuts = layout.offcuts.reduce((sum, { areaMm2 }) => sum + areaMm2, 0)
  const left = laid + offcuts - bought
  return [
    ...(Math.abs(net) <= slackMm2 ? [] : [`sheets − laps + gaps − roof = ${net} mm²`]),
    ...(Math.abs(left) <= slackMm2 ? [] : [`sheets + offcuts − bought = ${left} mm²`])
  ]
}

/** Where two sheets lie over each other, pair by pair: a third sheet in the same place would be counted thrice and spoil the sum. */
function lapsOf(sheets: readonly Shape[]): number {
  const placed = sheets.map((one) => ({ one, at: extent(one) })).sort((a, b) => a.at.minX - b.at.minX)
  let sum = 0
  for (const [i, a] of placed.entries()) {
    for (let j = i + 1; j < placed.length && (placed[j] as typeof a).at.minX < a.at.maxX; j += 1) {
      const b = placed[j] as typeof a
      if (meets(a.at, b.at)) sum += area(both(a.one, b.one))
    }
  }
  return sum
}

/** Every piece is cut once, from its own stretch of one roll, and fits what was cut for it. */
function rolls(_: Seen, layout: Layout): readonly string[] {
  const { rollMm, widthMm } = layout.sizes
  const cuts = layout.rolls.flatMap(({ number, cuts: ones }) => ones.map((one) => ({ ...one, roll: number })))
  const once = new Set(cuts.map(({ piece }) => piece)).size === layout.pieces.length && cuts.length === layout.pieces.length
  const apart = layout.rolls.every(({ cuts: ones }) =>
    ones.every(({ fromMm, toMm }, i) => fromMm >= (ones[i - 1]?.toMm ?? 0) - 1e-6 && toMm > fromMm && toMm <= rollMm + 1e-3)
  )
  const fit = layout.pieces.every(({ number, roll, cutMm, region }) => {
    const cut = cuts.find(({ piece }) => piece === number)
    const at = axes(extent(collected(shapes(region))), layout)
    const long = Math.abs((cut?.toMm ?? 0) - (cut?.fromMm ?? 0) - cutMm) < 1e-6 && cut?.roll === roll
    return long && at.to - at.from <= cutMm + 1e-3 && at.high - at.low <= widthMm + 1e-3
  })
  return [
    ...(once ? [] : ['a piece is not cut once']),
    ...(apart ? [] : ['cuts of a roll overlap']),
    ...(fit ? [] : ['a piece does not fit its cut'])
  ]
}

function stagger({ joints: all, strips }: Layout): readonly string[] {
  const told = all.every(({ strip, atMm }) => strips.some((one) => one.number === strip && Math.abs(one.atMm - atMm) < 1e-6))
  const close = all.filter(
    ({ course, atMm, staggered }) => staggered && all.some((one) => one.course === course - 1 && Math.abs(one.atMm - atMm) < 299.99)
  )
  return [
    ...(told ? [] : ['a joint without its strip']),
    ...close.map(({ course, atMm }) => `joint at ${atMm} of course ${course} too near the one below`)
  ]
}

interface Axes {
  readonly from: number
  readonly to: number
  readonly low: number
  readonly high: number
}

/** An extent along and across the sheets. */
function axes({ minX, minY, maxX, maxY }: Extent, { along }: Layout): Axes {
  return along === 'x' ? { from: minX, to: maxX, low: minY, high: maxY } : { from: minY, to: maxY, low: minX, high: maxX }
}

function boxOn({ along }: Layout, from: number, to: number, low: number, high: number): Shape {
  return along === 'x' ? box(from, low, to, high) : box(low, from, high, to)
}
