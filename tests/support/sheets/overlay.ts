import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js'
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js'
import PrecisionModel from 'jsts/org/locationtech/jts/geom/PrecisionModel.js'
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js'
import SnapIfNeededOverlayOp from 'jsts/org/locationtech/jts/operation/overlay/snap/SnapIfNeededOverlayOp.js'
import UnaryUnionOp from 'jsts/org/locationtech/jts/operation/union/UnaryUnionOp.js'
import GeometryPrecisionReducer from 'jsts/org/locationtech/jts/precision/GeometryPrecisionReducer.js'

/**
 * Areas and overlays by JSTS, a port of the JTS Topology Suite: a second library, of another make than the one the layout cuts with.
 * Nothing here comes from the layout's own functions.
 */
export interface Shape {
  getArea(): number
  isEmpty(): boolean
  getGeometryType(): string
  getNumGeometries(): number
  getGeometryN(n: number): Shape
  getEnvelopeInternal(): { getMinX(): number; getMinY(): number; getMaxX(): number; getMaxY(): number }
}
type Ring = readonly (readonly [number, number])[]
interface Outline {
  readonly outer: Ring
  readonly holes: readonly Ring[]
}

const factory = new GeometryFactory()

function ring(points: Ring) {
  const closed = [...points, points[0] as Ring[number]]
  return factory.createLinearRing(closed.map(([x, y]) => new Coordinate(x, y)))
}

export function shape({ outer, holes }: Outline): Shape {
  return factory.createPolygon(ring(outer), holes.map(ring)) as unknown as Shape
}

export function shapes(region: readonly Outline[]): readonly Shape[] {
  return region.map(shape)
}

export function box(minX: number, minY: number, maxX: number, maxY: number): Shape {
  const outer = [
    [minX, minY],
    [maxX, minY],
    [maxX, maxY],
    [minX, maxY]
  ] as const
  return shape({ outer, holes: [] })
}

export function collected(all: readonly Shape[]): Shape {
  return factory.createGeometryCollection([...all]) as unknown as Shape
}

export function unionOf(all: readonly Shape[]): Shape {
  return (UnaryUnionOp.union(collected(all)) as unknown as Shape | null) ?? collected([])
}

export function both(a: Shape, b: Shape): Shape {
  return overlay(a, b, OverlayOp.INTERSECTION)
}

export function less(a: Shape, b: Shape): Shape {
  return overlay(a, b, OverlayOp.DIFFERENCE)
}

function overlay(a: Shape, b: Shape, operation: number): Shape {
  const [one, two] = [polygonal(a), polygonal(b)]
  try {
    return SnapIfNeededOverlayOp.overlayOp(one, two, operation) as unknown as Shape
  } catch {
    // JTS's floating overlay may fail where a corner lies on another's side to the last digit: a grid of 0.1 µm frees it.
    return OverlayOp.overlayOp(nudged(one), nudged(two), operation) as unknown as Shape
  }
}

/** Every corner on a grid of 0.1 µm. */
function nudged(whole: Shape): Shape {
  return GeometryPrecisionReducer.reduce(whole, new PrecisionModel(1e4)) as unknown as Shape
}

/** Only the polygons of a result: lines and points where shapes touch have no area. */
function polygonal(whole: Shape): Shape {
  return whole.getGeometryType() === 'GeometryCollection' ? (factory.createMultiPolygon(partsOf(whole)) as unknown as Shape) : whole
}

export function partsOf(whole: Shape): Shape[] {
  if (whole.getGeometryType() === 'Polygon') return whole.isEmpty() ? [] : [whole]
  return Array.from({ length: whole.getNumGeometries() }, (_, i) => whole.getGeometryN(i))
    .filter((part) => part !== whole)
    .flatMap(partsOf)
}

export function area(whole: Shape): number {
  return partsOf(whole).reduce((sum, part) => sum + part.getArea(), 0)
}

export interface Extent {
  readonly minX: number
  readonly minY: number
  readonly maxX: number
  readonly maxY: number
}

export function extent(whole: Shape): Extent {
  const envelope = whole.getEnvelopeInternal()
  return { minX: envelope.getMinX(), minY: envelope.getMinY(), maxX: envelope.getMaxX(), maxY: envelope.getMaxY() }
}

/** Whether two extents share more than a line. */
export function meets(a: Extent, b: Extent): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY
}
