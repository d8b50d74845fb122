import type { Run } from './bands.js'
import { intersection, union } from './clip.js'
import { grouped } from './grouped.js'
import type { CoverStrip, Patch, SheetSizes } from './layout.js'
import { type Box, boxOfRegion, type Region, rectangle } from './polygon.js'
import { type Laps, lastAtMost } from './seams.js'

type Strip = Pick<CoverStrip, 'region'>

/** What patches are laid over. */
export interface Stacked {
  readonly strips: readonly Strip[]
  readonly laps: Laps
  readonly runs: readonly Run[]
  /** Low edges of the courses. */
  readonly lowsMm: readonly number[]
}

/**
 * Patches over every place where sheets and strips lie `patchFromLayers` (3 … 20) deep: the stack's rectangle and the run past a lap
 * all round it. Gaps between sheet ends count as sheet, patches do not count. Two sheets at most lie over each other.
 */
export function patchesOver(stacked: Stacked, sizes: SheetSizes): readonly Omit<Patch, 'number'>[] {
  const layers = sizes.patchFromLayers
  return clustersOf(stacked.strips).flatMap((cluster) =>
    stacksIn(cluster, stacked, layers).map((stack) => {
      const { minX, minY, maxX, maxY } = boxOfRegion([stack])
      const past = sizes.pastLapMm
      const box = { minX: minX - past, minY: minY - past, maxX: maxX + past, maxY: maxY + past }
      const region = onRoof(box, stacked)
      return {
        layers,
        at: [(minX + maxX) / 2, (minY + maxY) / 2] as const,
        region,
        weldPerimeterMm: roundedMm(boxOfRegion(region), sizes.cornerRadiusMm)
      }
    })
  )
}

function roundedMm({ minX, minY, maxX, maxY }: Box, cornerRadiusMm: number): number {
  const [width, height] = [maxX - minX, maxY - minY]
  return 2 * (width + height) - (8 - 2 * Math.PI) * Math.min(cornerRadiusMm, width / 2, height / 2)
}

/** Strips that lie over one another, together. */
function clustersOf(strips: readonly Strip[]): readonly (readonly Strip[])[] {
  const boxes = strips.map(({ region }) => boxOfRegion(region))
  const order = [...strips.keys()].sort((a, b) => (boxes[a] as Box).minX - (boxes[b] as Box).minX)
  const parent = strips.map((_, i) => i)
  const root = (i: number): number => {
    let at = i
    while (parent[at] !== at) at = parent[at] as number
    return at
  }
  let active: number[] = []
  for (const i of order) {
    const box = boxes[i] as Box
    active = active.filter((j) => (boxes[j] as Box).maxX > box.minX)
    for (const j of active) if ((boxes[j] as Box).maxY > box.minY && (boxes[j] as Box).minY < box.maxY) parent[root(j)] = root(i)
    active.push(i)
  }
  return [...grouped(strips.keys(), root).values()].map((cluster) => cluster.map((i) => strips[i] as Strip))
}

/** Where `layers` pieces or more lie: so many less two strips over a lap, or so many less one over a sheet. */
function stacksIn(cluster: readonly Strip[], stacked: Stacked, layers: number): Region {
  if (cluster.length < layers - 2) return []
  const depths = depthsOf(cluster, layers - 1)
  const overLap = depths[layers - 3] ?? []
  const overSheet = depths[layers - 2] ?? []
  return union([...intersection(overLap, lapsNear(boxOfRegion(overLap), stacked)), ...overSheet])
}

/** Regions 1, 2 … `most` strips deep. */
function depthsOf(cluster: readonly Strip[], most: number): readonly Region[] {
  const depths: Region[] = Array.from({ length: most }, () => [])
  for (const { region } of cluster) {
    for (let d = most - 1; d > 0; d -= 1) depths[d] = union([...(depths[d] as Region), ...intersection(depths[d - 1] as Region, region)])
    depths[0] = union([...(depths[0] as Region), ...region])
  }
  return depths
}

/** Laps whose course a box reaches. */
function lapsNear({ minX, maxX, minY, maxY }: Box, { laps, lowsMm }: Stacked): Region {
  if (!(minY < maxY)) return []
  const near: Region[number][] = []
  for (let course = lastAtMost(lowsMm, minY); course <= lastAtMost(lowsMm, maxY) + 1; course += 1) {
    for (const polygon of laps.overlaps.get(course) ?? []) {
      const box = boxOfRegion([polygon])
      if (box.minX < maxX && box.maxX > minX && box.minY < maxY && box.maxY > minY) near.push(polygon)
    }
  }
  return near
}

function onRoof(box: Box, { runs, lowsMm }: Stacked): Region {
  const [first, last] = [lastAtMost(lowsMm, box.minY), lastAtMost(lowsMm, box.maxY) + 1]
  const near = runs.filter(
    ({ course, fromMm, toMm, lowMm, highMm }) =>
      course >= first && course <= last && fromMm < box.maxX && toMm > box.minX && lowMm < box.maxY && highMm > box.minY
  )
  return intersection(
    near.map(({ polygon }) => polygon),
    [rectangle(box)]
  )
}
