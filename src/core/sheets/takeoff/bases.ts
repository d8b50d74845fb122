import type { LimitsSheet } from '../../limits/sheet.js'
import { fastenersOnLeg, largestFirstMm } from '../fasteners.js'
import type { Leg } from './legs.js'
import { type Addend, addend, factor, type TakeoffLine, wholeLine } from './line.js'

type Sizes = Pick<LimitsSheet, 'takeoff'>

/** Fasteners at bases: on each leg ceil((L − 2a)/s) + 1, the first at a = min(s/2, 150 mm); flat in the field or vertical through a bar. Common practice, no source. */
export function fastenersLine(legs: readonly Leg[], { takeoff }: Sizes): TakeoffLine {
  const { fastenerMm, fastenersPerBox } = takeoff
  const onLeg = (lengthM: number) => fastenersOnLeg(lengthM, fastenerMm, largestFirstMm(fastenerMm))
  return wholeLine({ item: 'fasteners', sum: perLength(legs, onLeg) ?? perRing(legs, onLeg), spacingMm: fastenerMm, pack: fastenersPerBox })
}

const mostLengths = 8

/** Legs of one ring and length (to 1 mm) together, named by both; null where there are too many to read. */
function perLength(legs: readonly Leg[], onLeg: (lengthM: number) => number): readonly Addend[] | null {
  const alike = new Map<string, Leg[]>()
  for (const leg of legs) {
    const name = `${leg.ring} ${leg.lengthM.toFixed(3)}`
    const others = alike.get(name) ?? []
    others.push(leg)
    alike.set(name, others)
  }
  // Legs that differ by less than 1 mm may still take one fastener more.
  const exact = [...alike.values()].every(([first, ...rest]) => rest.every(({ lengthM }) => onLeg(lengthM) === onLeg((first as Leg).lengthM)))
  if (alike.size > mostLengths || !exact) return null
  return [...alike].map(([name, each]) => addend(name, [factor('', onLeg((each[0] as Leg).lengthM), 'piece'), factor('×', each.length, 'piece')]))
}

function perRing(legs: readonly Leg[], onLeg: (lengthM: number) => number): readonly Addend[] {
  const counts = new Map<number, number>()
  for (const { ring, lengthM } of legs) counts.set(ring, (counts.get(ring) ?? 0) + onLeg(lengthM))
  return [...counts].map(([ring, count]) => addend(String(ring), [factor('', count, 'piece')]))
}

/** Bars along all bases, cut where they meet. */
export function barsLine(legs: readonly Leg[], { takeoff }: Sizes): TakeoffLine {
  const lengthM = legs.reduce((sum, leg) => sum + leg.lengthM, 0)
  return wholeLine({ item: 'bars', sum: [addend(null, [factor('', lengthM, 'm'), factor('÷', takeoff.barM, 'm')])] })
}
