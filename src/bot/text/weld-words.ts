/** What is said of metres, of coupons in a row, and of the power at the tool. */
export interface WeldWords {
  /** Of a welder or of all: "20 m cleared, 10 m on hold, 5 m released". */
  metres(cleared: string, onHold: string, released: string): string
  onHold(metres: string): string
  /** Put there by the message. */
  newOnHold(metres: string): string
  /** How metres come off hold. */
  readonly toRelease: string
  cuts(good: number, needed: number): string
  readonly probed: string
  readonly notProbed: string
  /** Cut back and probed. */
  readonly release: string
  readonly goodCut: string
  readonly badCut: string
  coupons(count: number): string
  tooFew(count: number, least: number): string
  readonly falling: string
  readonly low: string
  shortIn(coupons: number): string
  readonly checkDrift: string
  tool(volts: string, heat: string): string
  generator(watts: string): string
  section(area: string, most: string): string
}
