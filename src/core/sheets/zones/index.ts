import { asce } from './asce.js'
import { en } from './en.js'
import { nbcc } from './nbcc.js'
import type { FlatRoof, ZoneStandard, ZonesOf } from './zone.js'

/** Every standard that wind zones can be drawn by. A new one is a file and a line here. */
export const zoneStandards = { en, asce, nbcc } as const satisfies Readonly<Record<string, ZoneStandard>>

export type ZoneStandardName = keyof typeof zoneStandards
export const zoneStandardNames = Object.keys(zoneStandards) as readonly ZoneStandardName[]

/** Zones, or why they are the engineer's: no rectangle, too high for the figure, or the height was never said. */
export type ZoneAnswer =
  | ({ readonly kind: 'zones'; readonly standard: ZoneStandardName } & ZonesOf)
  | { readonly kind: 'engineer'; readonly standard: ZoneStandardName; readonly why: 'shape' | 'height' }
  | { readonly kind: 'unknown'; readonly standard: ZoneStandardName; readonly missing: 'height' }

/**
 * Wind zones of a roof by a standard. `size`: plan sizes of a rectangle, null for any other shape; `heightM`: null when nobody
 * said it. Geometry only: the pattern of a zone is the manufacturer's or the engineer's.
 */
export function windZones(standard: ZoneStandardName, size: Omit<FlatRoof, 'heightM'> | null, heightM: number | null): ZoneAnswer {
  if (size === null) return { kind: 'engineer', standard, why: 'shape' }
  if (heightM === null) return { kind: 'unknown', standard, missing: 'height' }
  const roof = { ...size, heightM }
  const by = zoneStandards[standard]
  if (!(heightM <= by.heightMaxM(roof))) return { kind: 'engineer', standard, why: 'height' }
  return { kind: 'zones', standard, ...by.zones(roof) }
}
