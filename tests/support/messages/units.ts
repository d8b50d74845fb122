/**
 * Units as the world writes them and what they are worth, by definition and apart from the program's own table: the international
 * foot and mile (1959), the nautical mile of 1929, the degree Fahrenheit as 5/9 K from 32 (NIST SP 811, appendix B.8 and B.9),
 * the pound-force as 0.45359237 kg × 9.80665 m/s². Wire gauges by tests/truth/conductors.json.
 */
export type Scale =
  | 'temperature'
  | 'speed'
  | 'length'
  | 'area'
  | 'wire'
  | 'time'
  | 'advance'
  | 'force'
  | 'percent'
  | 'volts'
  | 'watts'
  | 'sun'
  | 'count'

export interface UnitOf {
  readonly scale: Scale
  /** To °C, km/h, mm, m², mm², s, m/min, N. */
  readonly toBase: (value: number) => number
  readonly fromBase: (value: number) => number
  /** As typed, from outside contract §5 and the words of the trade. */
  readonly spelled: readonly string[]
}

function by(scale: Scale, factor: number, ...spelled: string[]): UnitOf {
  return { scale, toBase: (value) => value * factor, fromBase: (value) => value / factor, spelled }
}

export const unitsOf: Readonly<Record<string, UnitOf>> = {
  C: by('temperature', 1, 'C', '°C', '° C', 'c', 'ºC', 'celsius', 'degrees C', 'grados C', 'degrés C'),
  F: {
    scale: 'temperature',
    toBase: (value) => ((value - 32) * 5) / 9,
    fromBase: (value) => (value * 9) / 5 + 32,
    spelled: ['F', '°F', '° F', 'f', 'fahrenheit', 'degrees F', 'degree F', 'grados F']
  },
  '%': by('percent', 1, '%', 'pct', 'percent', 'por ciento', 'pour cent'),
  'km/h': by('speed', 1, 'km/h', 'kmh', 'KM/H', 'km per hour', 'km por hora'),
  'm/s': by('speed', 3600 / 1000, 'm/s', 'M/S'),
  mph: by('speed', 1609.344 / 1000, 'mph', 'MPH', 'miles per hour', 'millas por hora'),
  kn: by('speed', 1852 / 1000, 'kn', 'kt', 'knots'),
  mm: by('length', 1, 'mm', 'MM', 'millimeters', 'milímetros', 'millimètres'),
  mil: by('length', 25.4 / 1000, 'mil'),
  cm: by('length', 10, 'cm', 'centimetres', 'centímetros', 'centimètres'),
  m: by('length', 1000, 'm', 'meters', 'metros', 'mètres'),
  in: by('length', 25.4, 'in', '"', '”', '″', 'inches', 'pulgadas', 'pouces'),
  ft: by('length', 12 * 25.4, 'ft', "'", '’', '′', 'feet', 'pies', 'pieds'),
  m2: by('area', 1, 'm2', 'm²', 'square meters', 'metros cuadrados', 'mètres carrés'),
  ft2: by('area', 0.3048 ** 2, 'ft2', 'ft²', 'sqft', 'sf', 'square feet', 'pies cuadrados', 'pieds carrés'),
  mm2: by('wire', 1, 'mm2', 'mm²'),
  s: by('time', 1, 's', 'seconds', 'segundos', 'secondes'),
  min: by('time', 60, 'min', 'minutes', 'minutos'),
  h: by('time', 3600, 'h'),
  'm/min': by('advance', 1, 'm/min'),
  'ft/min': by('advance', 0.3048, 'ft/min', 'fpm'),
  V: by('volts', 1, 'V', 'v', 'volts'),
  W: by('watts', 1, 'W', 'w'),
  'W/m2': by('sun', 1, 'W/m2', 'W/m²'),
  N: by('force', 1, 'N'),
  lbf: by('force', 0.45359237 * 9.80665, 'lbf', 'lb', 'lbs', 'pounds', 'libras', 'livres'),
  none: by('count', 1)
}

/** Units of a scale, by name. */
export function unitsIn(scale: Scale): readonly string[] {
  return Object.keys(unitsOf).filter((name) => unitsOf[name]?.scale === scale)
}

/** What a value typed in a unit is in the JSON unit of a slot. */
export function worth(value: number, typed: string, json: string): number {
  const from = unitsOf[typed] as UnitOf
  const to = unitsOf[json] as UnitOf
  return to.fromBase(from.toBase(value))
}
