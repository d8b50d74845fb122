import { z } from 'zod'
import { localPlane } from '../../core/sheets/local-plane.js'
import { type FileRing, nested, open, type ReadOutline } from '../../core/sheets/outline-file.js'
import { type FileUnit, mmPer, NotAnOutline } from './text.js'

const place = z.tuple([z.number(), z.number()]).rest(z.unknown())
const rings = z.array(z.array(place)).min(1)
type Rings = z.infer<typeof rings>

const anything = z.looseObject({
  type: z.string(),
  coordinates: z.unknown().optional(),
  geometry: z.unknown().optional(),
  geometries: z.array(z.unknown()).optional(),
  features: z.array(z.unknown()).optional()
})

/** Beyond this no roof is: what spreads less is in degrees, the rest in metres or feet. */
const degreesMost = 0.05
const deepest = 5

/** One polygon of a GeoJSON (RFC 7946), in degrees as it should be, or in a plane as many write it. */
export function readGeoJson(text: string, unit: FileUnit): ReadOutline {
  const found = polygonsIn(parsed(text), 0)
  const [polygon, other] = found
  if (polygon === undefined) throw new NotAnOutline('no-outline', '')
  if (other !== undefined) throw new NotAnOutline('several-outlines', String(found.length))
  polygon.forEach(closed)
  return nested(inPlane(polygon, unit).map(open))
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    throw new NotAnOutline('not-json', '')
  }
}

function polygonsIn(raw: unknown, depth: number): readonly Rings[] {
  const read = anything.safeParse(raw)
  if (!read.success || depth > deepest) return []
  const { type, coordinates, geometry, geometries = [], features = [] } = read.data
  if (type === 'Polygon') return [numbers(rings.safeParse(coordinates))]
  if (type === 'MultiPolygon') return numbers(z.array(rings).safeParse(coordinates))
  return [geometry, ...geometries, ...features].flatMap((each) => polygonsIn(each, depth + 1))
}

function numbers<T>(read: z.ZodSafeParseResult<T>): T {
  if (read.success) return read.data
  throw new NotAnOutline('bad-number', read.error.issues[0]?.path.join('.') ?? '')
}

function closed(ring: Rings[number], index: number): void {
  const [first, last] = [ring[0], ring.at(-1)]
  if (ring.length < 4 || first?.[0] !== last?.[0] || first?.[1] !== last?.[1]) throw new NotAnOutline('not-closed', `ring ${index}`)
}

function inPlane(polygon: Rings, unit: FileUnit): readonly FileRing[] {
  const places = polygon.flat().map(([x, y]) => [x, y] as const)
  const spread = (axis: 0 | 1) => {
    const values = places.map((each) => each[axis])
    return values.reduce((a, b) => Math.max(a, b)) - values.reduce((a, b) => Math.min(a, b))
  }
  const degrees = spread(0) < degreesMost && spread(1) < degreesMost && places.every(([lon, lat]) => Math.abs(lon) <= 180 && Math.abs(lat) <= 89)
  const points = degrees ? localPlane(places) : places.map(([x, y]) => [x * mmPer[unit], y * mmPer[unit]] as const)
  let next = 0
  return polygon.map((ring, index) =>
    ring.map((_, corner) => ({ at: points[next++] as readonly [number, number], word: `ring ${index}, ${corner}` }))
  )
}
