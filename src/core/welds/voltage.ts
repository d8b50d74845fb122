import { above, within } from '../physics/range.js'

export interface LeadInput {
  /** At the source, > 0…100,000 V. */
  readonly volts: number
  /** Rated power of the tool at that voltage, > 0…1e7 W. */
  readonly watts: number
  /** Length of the lead, one way, 0…100,000 m. */
  readonly leadM: number
  /** Section of each conductor, > 0…10,000 mm². */
  readonly areaMm2: number
}

export interface VoltageDrop {
  readonly dropPct: number
  /** Heat that is left, % of the rated heat: it goes with the square of the voltage. */
  readonly heatPct: number
  readonly toolV: number
}

/**
 * Largest resistance of a conductor at 20 °C, Ω/km, by section in mm²: IEC 60228, class 5 (flexible), plain copper.
 */
const class5OhmKm: ReadonlyMap<number, number> = new Map([
  [0.5, 39.0],
  [0.75, 26.0],
  [1, 19.5],
  [1.5, 13.3],
  [2.5, 7.98],
  [4, 4.95],
  [6, 3.3],
  [10, 1.91],
  [16, 1.21],
  [25, 0.78],
  [35, 0.554],
  [50, 0.386]
])

/** Ω·mm²/m at 20 °C, copper, for sections that the table does not list, wire gauges among them. From memory. */
const copper = 0.0178

/** Resistance of one conductor, Ω per metre. */
export function conductorOhmM(areaMm2: number): number {
  const listed = class5OhmKm.get(areaMm2)
  return listed === undefined ? copper / areaMm2 : listed / 1000
}

/**
 * Voltage at a heating tool on a two-wire lead: V = U·R/(R + 2·L·r) with R = U²/P, the tool taken as a plain resistance
 * and the copper as 20 °C warm (hot or coiled leads lose more). RangeError outside the ranges of `LeadInput`.
 */
export function voltageDrop({ volts, watts, leadM, areaMm2 }: LeadInput): VoltageDrop {
  above('volts', volts, 0, 1e5)
  above('watts', watts, 0, 1e7)
  within('leadM', leadM, 0, 1e5)
  above('areaMm2', areaMm2, 0, 1e4)
  const toolOhm = volts ** 2 / watts
  const share = toolOhm / (toolOhm + 2 * leadM * conductorOhmM(areaMm2))
  return { dropPct: 100 * (1 - share), heatPct: 100 * share ** 2, toolV: volts * share }
}

/** A generator that runs near its rating sags when the tool's fan and heat start together. From memory. */
const generatorShare = 1.25

/** Continuous rating of a generator for a tool of so many watts (> 0…1e7), up to the next 100 W. RangeError outside. */
export function generatorW(watts: number): number {
  above('watts', watts, 0, 1e7)
  return Math.ceil((watts * generatorShare) / 100 - 1e-9) * 100
}

/** The thinnest section of the table, mm², with which the drop stays at or below `maxPct` (%); null when none does. */
export function sectionFor(lead: Omit<LeadInput, 'areaMm2'>, maxPct: number): number | null {
  return [...class5OhmKm.keys()].find((areaMm2) => voltageDrop({ ...lead, areaMm2 }).dropPct <= maxPct) ?? null
}
