import type { FlatRoof, ZonePart, ZonesOf } from './zone.js'

interface Cuts {
  readonly x: readonly number[]
  readonly y: readonly number[]
}

/** Which zone a point lies in, x and y in m from the roof's corner. */
export type ZoneAt<Name extends string> = (x: number, y: number) => Name

/** Areas and rectangles of zones whose borders lie on the cuts: each field of that grid has one zone all over, that of its middle. */
export function partition<Name extends string>(
  { widthM, depthM }: Pick<FlatRoof, 'widthM' | 'depthM'>,
  names: readonly Name[],
  cuts: Cuts,
  zoneAt: ZoneAt<Name>
): Pick<ZonesOf<Name>, 'areasM2' | 'parts'> {
  const xs = steps(cuts.x, widthM)
  const rows = steps(cuts.y, depthM).map(([bottom, top]) => rowOf(xs, bottom, top, zoneAt))
  const parts = rows.reduce<readonly ZonePart<Name>[]>((done, row) => stack(done, row), [])
  const areas = names.map((name) => [name, parts.filter(({ zone }) => zone === name).reduce((sum, part) => sum + areaOf(part), 0)])
  return { areasM2: Object.fromEntries(areas) as Record<Name, number>, parts }
}

function areaOf({ left, bottom, right, top }: ZonePart): number {
  return (right - left) * (top - bottom)
}

/** From cut to cut, those outside left out. */
function steps(cuts: readonly number[], end: number): readonly (readonly [number, number])[] {
  const inside = [...new Set([0, ...cuts.filter((cut) => cut > 0 && cut < end), end])].sort((a, b) => a - b)
  return inside.slice(1).map((to, index) => [inside[index] as number, to] as const)
}

/** Neighbours of one zone become one rectangle. */
function rowOf<Name extends string>(xs: readonly (readonly [number, number])[], bottom: number, top: number, zoneAt: ZoneAt<Name>) {
  const row: ZonePart<Name>[] = []
  for (const [left, right] of xs) {
    const zone = zoneAt((left + right) / 2, (bottom + top) / 2)
    const last = row.at(-1)
    if (last?.zone === zone) row[row.length - 1] = { ...last, right }
    else row.push({ zone, left, bottom, right, top })
  }
  return row
}

/** A rectangle that goes on in the next row grows. */
function stack<Name extends string>(done: readonly ZonePart<Name>[], row: readonly ZonePart<Name>[]): readonly ZonePart<Name>[] {
  const goesOn = (part: ZonePart, next: ZonePart) =>
    part.zone === next.zone && part.left === next.left && part.right === next.right && part.top === next.bottom
  const grown = done.map((part) => {
    const next = row.find((each) => goesOn(part, each))
    return next === undefined ? part : { ...part, top: next.top }
  })
  return [...grown, ...row.filter((next) => !done.some((part) => goesOn(part, next)))]
}
