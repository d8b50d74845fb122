/** What is said of how far kits went. */
export interface YieldWords {
  lot(lot: string, real: string, kits: number): string
  day(date: string, real: string, kits: number): string
  /** A day or lot that is this far off the plan. */
  off(amount: string, thin: boolean): string
  left(iso: string, resin: string): string
  /** The parts of one kit emptied unevenly. */
  uneven(name: string, iso: string, resin: string): string
  used(area: string): string
  /** What to say of the kit that comes after an empty one. */
  readonly next: string
  /** Nobody named the kit. */
  assumed(name: string): string
  /** Area put down to a kit that had been said to be empty. */
  wasEmpty(name: string, at: string): string
  /** No seconds were measured. */
  openTimeOfSheet(amount: string): string
}
