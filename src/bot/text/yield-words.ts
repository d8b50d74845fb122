/** What is said of how far kits went. */
export interface YieldWords {
  lot(lot: string, real: string, kits: number): string
  day(date: string, real: string, kits: number): string
  /** A day or lot that is this far off the plan. */
  off(amount: string): string
  left(iso: string, resin: string): string
  /** The parts of one kit emptied unevenly. */
  uneven(name: string, iso: string, resin: string): string
}
