import type { Point } from './polygon.js'

/** Ellipsoid of WGS 84: semi-major axis, m, and flattening. NGA.STND.0036. */
const [axisM, flattening] = [6_378_137, 1 / 298.257223563]
const eccentricity2 = flattening * (2 - flattening)

/**
 * Longitudes and latitudes (degrees, −180…180 and −89…89) as mm east and north of the first of them, by the radii of curvature at
 * the middle latitude: exact to 1 mm in 100 m over the size of a roof. WGS 84.
 */
export function localPlane(places: readonly (readonly [lon: number, lat: number])[]): readonly Point[] {
  const [[lon0, lat0] = [0, 0]] = places
  const lats = places.map(([, lat]) => lat)
  const middle = (((Math.min(...lats) + Math.max(...lats)) / 2) * Math.PI) / 180
  const w2 = 1 - eccentricity2 * Math.sin(middle) ** 2
  const [north, east] = [(axisM * (1 - eccentricity2)) / w2 ** 1.5, axisM / Math.sqrt(w2)]
  const radians = Math.PI / 180
  return places.map(([lon, lat]) => [(lon - lon0) * radians * east * Math.cos(middle) * 1000, (lat - lat0) * radians * north * 1000])
}
