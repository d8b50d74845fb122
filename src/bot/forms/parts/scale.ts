import { convert, type Unit } from '../../../core/units.js'
import type { Lang, Units } from '../../answer.js'

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

/** A number of a JSON unit as the field is filled with it, in the person's decimals, at most three; null for none. */
export function fieldNumber(value: number | null, kind: Kind, units: Units, lang: Lang): string | null {
  const converted = value === null ? null : convert(value, scale.metric[kind], scale[units][kind])
  if (converted === null) return null
  const shown = String(Math.round(converted * 1000) / 1000)
  return lang === 'en' ? shown : shown.replace('.', ',')
}

const examples = { metric: { small: '40 · 4 cm', long: '3.2 · 320 cm' }, us: { small: '1 1/2 · 40 mm', long: '10.5 · 10\' 6"' } } as const

/** What a field of a length takes, by examples. */
export function lengthHint(units: Units, kind: 'small' | 'long', lang: Lang): string {
  const shown = examples[units][kind]
  return lang === 'en' ? shown : shown.replaceAll('.', ',')
}
