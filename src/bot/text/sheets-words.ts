import type { ZoneStandardName } from '../../core/sheets/zones/index.js'

/** What is said of a roof laid out. */
export interface SheetsWords {
  courses(count: number): string
  rolls(count: number): string
  area(amount: string): string
  /** Where the low side is: the courses begin there. */
  readonly along: Readonly<Record<'x' | 'y', string>>
  waste(percent: string): string
  leastRolls(count: number): string
  joints(count: number): string
  strips(count: number, total: string): string
  /** "17 × 2150 mm". */
  lengths(list: string): string
  land(amount: string): string
  patches(count: number): string
  readonly noPatches: string
  handPress(count: number): string
  weld(robot: string, hand: string, laps: string): string
  kits(kits: number, nozzles: number): string
  fasteners(count: number): string
  zones(standard: string, list: string): string
  readonly standards: Readonly<Record<ZoneStandardName, string>>
  readonly noZones: Readonly<Record<'shape' | 'height' | 'unknown', string>>
  /** Under the zones: whose the pattern is. */
  readonly pattern: string
  /** "roll 3: 16 m + 4 m, left 0 m". */
  roll(numbers: string, cuts: string, left: string): string
  readonly cutList: string
  place(number: number, x: string, y: string): string
  readonly patchPlaces: string
  readonly pressPlaces: string
}
