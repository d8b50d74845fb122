import { partition } from './partition.js'
import { type FlatRoof, refuseOutside, type ZoneStandard, type ZonesOf } from './zone.js'

const names = ['3', '2', '1', '1′'] as const
type Name = (typeof names)[number]

/** 60 ft, exactly; gable and flat roofs to 7°. */
const heightMaxM = 18.288

/**
 * Zones of a flat roof (> 0…10,000 m), h ≤ 60 ft: 2 is 0.6 h wide along the edges, 3 its L-shaped corners, 0.6 h along and 0.2 h
 * wide, 1 the next 0.6 h and 1′ the rest; on a small roof the inner ones go first. ASCE 7-22, figure 30.3-2A, from memory.
 * RangeError outside.
 */
export function asceZones(roof: FlatRoof): ZonesOf<Name> {
  const { widthM, depthM, heightM } = roof
  refuseOutside(roof, heightMaxM)
  const [narrow, wide] = [0.2 * heightM, 0.6 * heightM]
  const from = [narrow, wide, 2 * wide]
  const cuts = { x: [...from, ...from.map((cut) => widthM - cut)], y: [...from, ...from.map((cut) => depthM - cut)] }
  const zoneAt = (x: number, y: number): Name => {
    const [near, far] = sorted(Math.min(x, widthM - x), Math.min(y, depthM - y))
    if (near < narrow && far < wide) return '3'
    if (near < wide) return '2'
    return near < 2 * wide ? '1' : '1′'
  }
  return { names, ...partition(roof, names, cuts, zoneAt), widthsM: { '3': narrow, '2': wide, '1': wide } }
}

function sorted(a: number, b: number): readonly [number, number] {
  return a <= b ? [a, b] : [b, a]
}

export const asce: ZoneStandard = {
  title: 'ASCE 7-22',
  source: 'ASCE 7-22, figure 30.3-2A, h ≤ 60 ft, from memory',
  heightMaxM: () => heightMaxM,
  zones: asceZones
}
