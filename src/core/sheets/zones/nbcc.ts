import { partition } from './partition.js'
import { type FlatRoof, refuseOutside, type ZoneStandard, type ZonesOf } from './zone.js'

const names = ['c', 's', 'r'] as const
type Name = (typeof names)[number]

/** Low-rise: at most 20 m high, and lower than the smaller plan size; roofs to 7°. From memory. */
const lowRiseM = 20

/** End-zone width z, m: the smaller of 10 % of the least plan size and 40 % of the height, at least 4 % of that size and 1 m. NBCC, from memory. */
export function endZoneM({ widthM, depthM, heightM }: FlatRoof): number {
  const least = Math.min(widthM, depthM)
  return Math.max(Math.min(0.1 * least, 0.4 * heightM), 0.04 * least, 1)
}

/**
 * Zones of a low flat roof (> 0…10,000 m): corners c of z × z, edges s of width z, field r. NBCC low-rise figure for roofs to 7°,
 * from memory. RangeError outside, a roof that is no low-rise included.
 */
function nbccZones(roof: FlatRoof): ZonesOf<Name> {
  const { widthM, depthM } = roof
  refuseOutside(roof, heightMaxM(roof))
  const z = endZoneM(roof)
  const cuts = { x: [z, widthM - z], y: [z, depthM - z] }
  const zoneAt = (x: number, y: number): Name => {
    const [atX, atY] = [Math.min(x, widthM - x) < z, Math.min(y, depthM - y) < z]
    if (atX && atY) return 'c'
    return atX || atY ? 's' : 'r'
  }
  return { names, ...partition(roof, names, cuts, zoneAt), widthsM: { c: z, s: z } }
}

function heightMaxM({ widthM, depthM }: FlatRoof): number {
  return Math.min(lowRiseM, widthM, depthM)
}

export const nbcc: ZoneStandard = {
  title: 'NBCC',
  source: 'NBCC, low-rise buildings, end-zone width and zones c, s, r for roofs to 7°, from memory; h ≤ 20 m and below the smaller plan size',
  heightMaxM,
  zones: nbccZones
}
