import { partition } from './partition.js'
import { type FlatRoof, type OneWind, refuseOutside, type ZoneStandard, type ZonesOf } from './zone.js'

const names = ['F', 'G', 'H', 'I'] as const
type Name = (typeof names)[number]

/** EN 1991-1-4:2005, 1.1: buildings up to 200 m; 7.2.3: flat is within ±5°. */
const heightMaxM = 200

/**
 * The zones of one wind onto a side of length b of a flat roof b × d (> 0…10,000 m), h high (> 0…200 m): e = min(b, 2h), F e/4
 * along × e/10 deep at both ends, G between them, H on to e/2, I beyond. EN 1991-1-4:2005, figure 7.6. RangeError outside.
 */
export function enOneWind(b: number, d: number, h: number): OneWind {
  refuseOutside({ widthM: b, depthM: d, heightM: h }, heightMaxM)
  const eM = Math.min(b, 2 * h)
  const [fAlongM, fDeepM, hDeepM] = [eM / 4, Math.min(eM / 10, d), Math.min(eM / 2, d)]
  const areasM2 = { F: 2 * fAlongM * fDeepM, G: (b - 2 * fAlongM) * fDeepM, H: b * (hDeepM - fDeepM), I: b * (d - hDeepM) }
  return { eM, fAlongM, fDeepM, hDeepM, areasM2 }
}

/**
 * All four winds laid over each other: where they differ, the worse zone holds, F before G, H and I. Widths are those of the
 * wind with the larger e. Sizes and source as `enOneWind`.
 */
export function enZones(roof: FlatRoof): ZonesOf<Name> {
  const { widthM, depthM, heightM } = roof
  const [onWidth, onDepth] = [enOneWind(widthM, depthM, heightM), enOneWind(depthM, widthM, heightM)]
  const cuts = { x: cutsOf(onWidth, onDepth, widthM), y: cutsOf(onDepth, onWidth, depthM) }
  const zoneAt = (x: number, y: number) => {
    const [along, up] = [Math.min(x, widthM - x), Math.min(y, depthM - y)]
    return worse(zoneOf(onWidth, along, up), zoneOf(onDepth, up, along))
  }
  const wider = onWidth.eM >= onDepth.eM ? onWidth : onDepth
  return { names, ...partition(roof, names, cuts, zoneAt), widthsM: { F: wider.fDeepM, G: wider.fDeepM, H: wider.hDeepM - wider.fDeepM } }
}

/** Where the zones of both pairs of winds begin, along a side. */
function cutsOf(along: OneWind, across: OneWind, endM: number): readonly number[] {
  const from = [along.fAlongM, across.fDeepM, across.hDeepM]
  return [...from, ...from.map((cut) => endM - cut)]
}

/** The zone of a point: its distance from the nearer corner along the windward side, and in from that side. */
function zoneOf({ fAlongM, fDeepM, hDeepM }: OneWind, along: number, deep: number): Name {
  if (deep < fDeepM) return along < fAlongM ? 'F' : 'G'
  return deep < hDeepM ? 'H' : 'I'
}

function worse(a: Name, b: Name): Name {
  return names.indexOf(a) <= names.indexOf(b) ? a : b
}

export const en: ZoneStandard = {
  title: 'EN 1991-1-4',
  source: 'EN 1991-1-4:2005, 7.2.3 and figure 7.6; e = min(b, 2h)',
  heightMaxM: () => heightMaxM,
  zones: enZones
}
