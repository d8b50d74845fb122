import { above, within } from '../../physics/range.js'

/** A rectangular roof: plan sizes and the height of the eaves above ground. */
export interface FlatRoof {
  readonly widthM: number
  readonly depthM: number
  readonly heightM: number
}

/** Part of a zone: a rectangle with its sides along the roof's, from the roof's corner, m. */
export interface ZonePart<Name extends string = string> {
  readonly zone: Name
  readonly left: number
  readonly bottom: number
  readonly right: number
  readonly top: number
}

/** One wind of a standard's figure, onto a side of length b. */
export interface OneWind {
  /** The standard's e. */
  readonly eM: number
  /** How far corner F runs along the side, and how deep F and G are. */
  readonly fAlongM: number
  readonly fDeepM: number
  readonly hDeepM: number
  readonly areasM2: Readonly<Record<'F' | 'G' | 'H' | 'I', number>>
}

export interface ZonesOf<Name extends string = string> {
  /** The worst zone first. */
  readonly names: readonly Name[]
  readonly areasM2: Readonly<Record<Name, number>>
  /** How wide each zone is, measured in from the edge or from the zone before it; zones that take the rest have none. */
  readonly widthsM: Readonly<Record<string, number>>
  /** Rectangles that cover the roof once. */
  readonly parts: readonly ZonePart<Name>[]
}

export interface ZoneStandard {
  readonly title: string
  readonly source: string
  /** The highest roof that the standard's figure holds for, m. */
  heightMaxM(roof: FlatRoof): number
  /** Zones of a rectangle no higher; sizes > 0…10,000 m. RangeError outside. */
  zones(roof: FlatRoof): ZonesOf
}

/** RangeError for sizes that no figure is drawn for, and for a roof higher than a figure holds. */
export function refuseOutside({ widthM, depthM, heightM }: FlatRoof, heightMaxM: number): void {
  above('widthM', widthM, 0, 10_000)
  above('depthM', depthM, 0, 10_000)
  above('heightM', heightM, 0, Number.POSITIVE_INFINITY)
  within('heightM', heightM, 0, heightMaxM)
}
