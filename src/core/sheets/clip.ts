import { Clipper64, ClipType, FillRule, type Path64, PathType, type PolyPath64, PolyTree64 } from 'clipper2-ts'
import { type Point, type Polygon, type Region, type Ring, ringAreaMm2, ringsOf } from './polygon.js'

/** Wrapper of clipper2-ts, the only one. Coordinates become whole steps of 1 nm: areas of a roof hold to far less than 1 mm². */
const stepsPerMm = 1e6

/** Farther out than this (mm) a step no longer fits. */
const farthestMm = 1e7

export function intersection(subject: Region, clip: Region): Region {
  return subject.length === 0 || clip.length === 0 ? [] : run(ClipType.Intersection, subject, clip)
}

export function union(subject: Region): Region {
  return subject.length === 0 ? [] : run(ClipType.Union, subject, [])
}

function run(type: ClipType, subject: Region, clip: Region): Region {
  const clipper = new Clipper64()
  clipper.addPaths(subject.flatMap(ringsOf).map(pathOf), PathType.Subject)
  clipper.addPaths(clip.flatMap(ringsOf).map(pathOf), PathType.Clip)
  const tree = new PolyTree64()
  clipper.execute(type, FillRule.NonZero, tree)
  return polygonsIn(tree)
}

function pathOf(ring: Ring): Path64 {
  return ring.map(([xMm, yMm]) => ({ x: steps(xMm), y: steps(yMm) }))
}

function steps(mm: number): number {
  if (!(mm >= -farthestMm && mm <= farthestMm)) throw new RangeError(`a corner at ${mm} mm is too far out`)
  return Math.round(mm * stepsPerMm)
}

/** Outer rings with the openings right inside them, and what stands in those openings as polygons of its own. */
function polygonsIn(tree: PolyPath64): Region {
  return children(tree).flatMap((outer): Region => {
    const holes = children(outer)
    const polygon: Polygon = { outer: ringOf(outer, 1), holes: holes.map((hole) => ringOf(hole, -1)) }
    return [polygon, ...holes.flatMap(polygonsIn)]
  })
}

function children(node: PolyPath64): readonly PolyPath64[] {
  return Array.from({ length: node.count }, (_, i) => node.child(i))
}

function ringOf(node: PolyPath64, sense: 1 | -1): Ring {
  const ring = (node.polygon ?? []).map(({ x, y }): Point => [x / stepsPerMm, y / stepsPerMm])
  return ringAreaMm2(ring) * sense < 0 ? ring.reverse() : ring
}

/** The step of the clipping grid nearest to a length: what is on it comes back from clipping unchanged. */
export function snapped(mm: number): number {
  return steps(mm) / stepsPerMm
}
