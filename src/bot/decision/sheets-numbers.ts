import type { Json } from '../../core/log/entry.js'
import type { Layout } from '../../core/sheets/layout.js'
import type { Point } from '../../core/sheets/polygon.js'
import { remaining } from '../../core/sheets/remaining.js'
import type { Takeoff } from '../../core/sheets/takeoff.js'
import { totalsOf } from '../../core/sheets/totals.js'
import type { ZoneAnswer } from '../../core/sheets/zones/index.js'

/** Numbers of a roof laid out. `zones`: null where none were asked for or they are not known; `zonesBy` says why. `laidM2`: logged as laid so far. */
export function sheetsNumbers(layout: Layout, zones: ZoneAnswer | null, take: Takeoff, laidM2: number): Readonly<Record<string, Json>> {
  return {
    ...totalsOf(layout),
    courses: layout.courses,
    rolls: layout.rolls.length,
    rollsLeast: layout.leastRolls,
    endJoints: layout.joints.length,
    strips: layout.strips.length,
    patches: layout.patches.length,
    zones: zones?.kind === 'zones' ? { ...zones.areasM2 } : null,
    kits: take.kits.value,
    nozzles: take.nozzles.value,
    fasteners: take.fasteners.value,
    along: layout.along,
    pieces: layout.pieces.length,
    takeoff: Object.values(take) as unknown as Json,
    laidM2,
    remaining: remaining(take, layout.areaMm2 / 1e6, laidM2) as unknown as Json,
    landMm: layout.strips.length === 0 ? null : Math.min(...layout.strips.map(({ landMm }) => landMm)),
    zonesBy:
      zones === null ? null : { standard: zones.standard, why: zones.kind === 'zones' ? null : zones.kind === 'engineer' ? zones.why : 'unknown' },
    stripLengths: lengthsOf(layout),
    cutList: layout.rolls.map(({ number, cuts, leftMm }) => ({ roll: number, cutsMm: cuts.map(({ fromMm, toMm }) => toMm - fromMm), leftMm })),
    patchesAt: layout.patches.map(({ number, at }) => ({ patch: number, ...placeOf(at) })),
    handPressAt: layout.handPress.map(({ strip, at }) => ({ strip, ...placeOf(at) }))
  }
}

function placeOf([xMm, yMm]: Point) {
  return { xM: xMm / 1000, yM: yMm / 1000 }
}

/** Strips by length, the most frequent first. */
function lengthsOf({ strips }: Layout): Json {
  const counts = new Map<number, number>()
  for (const { lengthMm } of strips) {
    const rounded = Math.round(lengthMm * 10) / 10
    counts.set(rounded, (counts.get(rounded) ?? 0) + 1)
  }
  return [...counts].sort(([a, m], [b, n]) => n - m || b - a).map(([lengthMm, count]) => ({ lengthMm, count }))
}
