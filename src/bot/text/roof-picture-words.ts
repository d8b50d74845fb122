/** Words on the drawing of a roof or a strip, short enough to be read on it, and those of its alt text. */
export interface RoofPictureWords {
  /** First words of the alt text. */
  title(site: string): string
  stripTitle(sheets: number): string
  size(width: string, depth: string): string
  courses(count: number, along: 'x' | 'y'): string
  readonly lowSide: string
  /** Letter of the north arrow. */
  readonly north: string
  readonly northUp: string
  rolls(count: number): string
  joints(count: number): string
  strips(count: number): string
  patches(count: number): string
  handPress(count: number): string
  openings(count: number): string
  zones(standard: string): string
  /** `width`: how wide the zone is; null where it takes the rest. */
  zone(name: string, area: string, width: string | null): string
  readonly zonesEngineer: string
  readonly zonesUnknown: string
  readonly patternEngineer: string
  openVoids(count: number): string
  voidAt(number: number, x: string, y: string): string
  /** Numbers of patches for which the drawing had no room. */
  notNumbered(count: number): string
  /** What the words on a sheet are: number of its roll and the length cut from it. */
  readonly cuts: string
  readonly notToScale: string
  readonly gap: string
  readonly land: string
  readonly least: string
  readonly off: string
  readonly pastLap: string
  readonly toEdge: string
  readonly radius: string
  readonly lap: string
  readonly sheet: string
  readonly edge: string
  readonly weld: string
}
