import { counted } from '../plural.js'
import type { WidthsWords } from '../widths-words.js'

export const widths: WidthsWords = {
  title: (welder) => `${welder} : largeurs d’éprouvette`,
  mean: 'moyenne',
  high: 'haut',
  low: 'bas',
  least: 'minimum',
  newest: (width) => `dernière ${width}`,
  none: 'pas encore d’éprouvette',
  passed: 'bonne',
  failed: 'ratée',
  coupons: (count) => counted('fr', count, { one: 'éprouvette', other: 'éprouvettes' }),
  one: (time, width, said) => `${time} ${width} ${said}`
}
