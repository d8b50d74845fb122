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

/** What a standard holds for. */
export interface ZoneLimits {
  readonly heightMaxM: number
  readonly slopeMaxDeg: number
}

export interface ZoneStandard {
  readonly title: string
  readonly source: string
  readonly limits: ZoneLimits
  /** Zones of a rectangle within the limits; sizes > 0, m. RangeError outside. */
  zones(roof: FlatRoof): ZonesOf
  /** Whether the height is beyond what the standard's figure holds for. */
  tooHigh(roof: FlatRoof): boolean
}
