import { convert, type Unit } from '../../../core/units.js'
import type { Units } from '../../answer.js'

/** Units of the fields of a form, as they are typed behind a number. The metric ones are those of numbers in JSON. */
export const scale = {
  metric: { temperature: 'C', small: 'mm', long: 'm', area: 'm2', speed: 'm/min', wind: 'km/h' },
  us: { temperature: 'F', small: 'in', long: 'ft', area: 'ft2', speed: 'ft/min', wind: 'mph' }
} as const satisfies Readonly<Record<Units, Readonly<Record<string, Unit>>>>

type Kind = keyof (typeof scale)['metric']

const shown: Readonly<Record<string, string>> = { C: '°C', F: '°F', m2: 'm²', ft2: 'ft²' }

/** "Set temperature, °C". */
export function inUnit(label: string, kind: Kind, units: Units): string {
  const unit = scale[units][kind]
  return `${label}, ${shown[unit] ?? unit}`
}

/** A number of a JSON unit as the field takes it: a point, at most three places; null for none. */
export function fieldNumber(value: number | null, kind: Kind, units: Units): string | null {
  const converted = value === null ? null : convert(value, scale.metric[kind], scale[units][kind])
  return converted === null ? null : String(Math.round(converted * 1000) / 1000)
}
