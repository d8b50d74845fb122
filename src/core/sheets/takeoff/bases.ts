import type { LimitsSheet } from '../../limits/sheet.js'
import { fastenersOnLeg, largestFirstMm } from '../fasteners.js'
import type { Leg } from './legs.js'
import { type Addend, addend, factor, type TakeoffLine, wholeLine } from './line.js'

type Sizes = Pick<LimitsSheet, 'takeoff'>

/** Fasteners at bases: on each leg ceil((L − 2a)/s) + 1, the first at a = min(s/2, 150 mm); flat in the field or vertical through a bar. Common practice, no source. */
export function fastenersLine(legs: readonly Leg[], { takeoff }: Sizes): TakeoffLine {
  const { fastenerMm, fastenersPerBox } = takeoff
  const sum = perRing(legs, (each) => each.reduce((count, { lengthM }) => count + fastenersOnLeg(lengthM, fastenerMm, largestFirstMm(fastenerMm)), 0))
  return wholeLine({ item: 'fasteners', sum, pack: fastenersPerBox })
}

function perRing(legs: readonly Leg[], count: (legs: readonly Leg[]) => number): readonly Addend[] {
  const rings = [...new Set(legs.map(({ ring }) => ring))]
  return rings.map((ring) => addend(String(ring), [factor('', count(legs.filter((leg) => leg.ring === ring)), 'piece')]))
}

/** Bars along all bases, cut where they meet. */
export function barsLine(legs: readonly Leg[], { takeoff }: Sizes): TakeoffLine {
  const lengthM = legs.reduce((sum, leg) => sum + leg.lengthM, 0)
  return wholeLine({ item: 'bars', sum: [addend(null, [factor('', lengthM, 'm'), factor('÷', takeoff.barM, 'm')])] })
}
