/**
 * The only place that converts. Each unit names its quantity and how it maps to that quantity's base unit:
 * base = value × factor + offset. Factors are exact by definition (inch 25.4 mm, foot 0.3048 m, mile 1609.344 m,
 * nautical mile 1852 m, pound-force 4.4482216152605 N: NIST SP 811), wire gauges by ASTM B258 (0.127 mm × 92^((36 − n)/39)).
 */
const table = {
  C: { quantity: 'temperature', factor: 1, offset: 0 },
  F: { quantity: 'temperature', factor: 5 / 9, offset: -160 / 9 },
  K: { quantity: 'difference', factor: 1, offset: 0 },
  deltaF: { quantity: 'difference', factor: 5 / 9, offset: 0 },
  '%': { quantity: 'percent', factor: 1, offset: 0 },
  'km/h': { quantity: 'speed', factor: 1, offset: 0 },
  'm/s': { quantity: 'speed', factor: 3.6, offset: 0 },
  mph: { quantity: 'speed', factor: 1.609344, offset: 0 },
  kn: { quantity: 'speed', factor: 1.852, offset: 0 },
  mm: { quantity: 'length', factor: 1, offset: 0 },
  cm: { quantity: 'length', factor: 10, offset: 0 },
  m: { quantity: 'length', factor: 1000, offset: 0 },
  in: { quantity: 'length', factor: 25.4, offset: 0 },
  ft: { quantity: 'length', factor: 304.8, offset: 0 },
  mil: { quantity: 'length', factor: 0.0254, offset: 0 },
  m2: { quantity: 'area', factor: 1, offset: 0 },
  ft2: { quantity: 'area', factor: 0.09290304, offset: 0 },
  mm2: { quantity: 'wire', factor: 1, offset: 0 },
  s: { quantity: 'time', factor: 1, offset: 0 },
  min: { quantity: 'time', factor: 60, offset: 0 },
  h: { quantity: 'time', factor: 3600, offset: 0 },
  'm/min': { quantity: 'advance', factor: 1, offset: 0 },
  'ft/min': { quantity: 'advance', factor: 0.3048, offset: 0 },
  V: { quantity: 'voltage', factor: 1, offset: 0 },
  W: { quantity: 'power', factor: 1, offset: 0 },
  'W/m2': { quantity: 'irradiance', factor: 1, offset: 0 },
  N: { quantity: 'force', factor: 1, offset: 0 },
  lbf: { quantity: 'force', factor: 4.4482216152605, offset: 0 }
} as const

export type Unit = keyof typeof table | 'AWG'
export type Quantity = (typeof table)[keyof typeof table]['quantity']

/** Every unit, as it is written in data. */
export const unitNames: readonly Unit[] = [...(Object.keys(table) as (keyof typeof table)[]), 'AWG']

/** Cross-section in mm² of an American wire gauge (0 … 40), ASTM B258. */
export function awgToMm2(gauge: number): number {
  const diameterMm = 0.127 * 92 ** ((36 - gauge) / 39)
  return (Math.PI / 4) * diameterMm ** 2
}

export function quantityOf(unit: Unit): Quantity {
  return unit === 'AWG' ? 'wire' : table[unit].quantity
}

/** Converts between two units of one quantity; null when they measure different things. AWG converts one way, to mm². */
export function convert(value: number, from: Unit, to: Unit): number | null {
  if (from === to) return value
  if (quantityOf(from) !== quantityOf(to) || to === 'AWG') return null
  if (from === 'AWG') return awgToMm2(value)
  const a = table[from]
  const b = table[to]
  return (value * a.factor + a.offset - b.offset) / b.factor
}

/** Six decimals: the precision of every number that leaves the program and of every comparison with a limit. */
export function round6(value: number): number {
  const rounded = Math.round(value * 1e6) / 1e6
  return rounded === 0 ? 0 : rounded
}
