import type { LimitsSheet } from '../../limits/sheet.js'
import type { ZoneAnswer, ZoneStandardName } from '../zones/index.js'
import { type Addend, addend, factor, type TakeoffLine, wholeLine } from './line.js'

type Place = 'Field' | 'Perimeter' | 'Corner'

/** Which of the sheet's patterns a zone of a standard takes: the worst corners, the strip along the edges, or the rest. Common practice, no source. */
const placeOf: Readonly<Record<ZoneStandardName, Readonly<Record<string, Place>>>> = {
  en: { F: 'Corner', G: 'Perimeter', H: 'Field', I: 'Field' },
  asce: { '3': 'Corner', '2': 'Perimeter', '1': 'Field', '1′': 'Field' },
  nbcc: { c: 'Corner', s: 'Perimeter', r: 'Field' }
}

/**
 * Kits = Σ area of a zone × its pattern ÷ yield, plus waste; the whole roof by the field's pattern where zones are not known.
 * Openings take nothing off a zone: they share its area as the roof's does. Common practice, no source.
 */
export function kitsLine(areaM2: number, zones: ZoneAnswer | null, { foam, takeoff }: Pick<LimitsSheet, 'foam' | 'takeoff'>): TakeoffLine {
  const part = (name: string | null, zoneM2: number, place: Place): Addend =>
    addend(name, [factor('', zoneM2, 'm2'), factor('×', takeoff[`foam${place}Pct`], '%'), factor('÷', foam.yieldM2PerKit, 'm2')])
  const sum = zones?.kind === 'zones' ? byZone(areaM2, zones, part) : [part(null, areaM2, 'Field')]
  return wholeLine({ item: 'kits', sum, wastePct: takeoff.foamWastePct })
}

function byZone(
  areaM2: number,
  { standard, names, areasM2 }: Extract<ZoneAnswer, { kind: 'zones' }>,
  part: (name: string, zoneM2: number, place: Place) => Addend
): readonly Addend[] {
  const allM2 = names.reduce((sum, name) => sum + (areasM2[name] as number), 0)
  return names
    .filter((name) => (areasM2[name] as number) > 0)
    .map((name) => part(name, ((areasM2[name] as number) * areaM2) / allM2, placeOf[standard][name] ?? 'Field'))
}

/** Nozzles = kits × nozzles of a kit. Common practice, no source. */
export function nozzlesLine(kits: number, { foam }: Pick<LimitsSheet, 'foam'>): TakeoffLine {
  return wholeLine({ item: 'nozzles', sum: [addend(null, [factor('', kits, 'piece'), factor('×', foam.nozzlesPerKit, 'piece')])] })
}
