import { counted } from '../plural.js'
import type { WidthsWords } from '../widths-words.js'

export const widths: WidthsWords = {
  title: (welder) => `${welder}: anchos de probeta`,
  mean: 'media',
  high: 'alto',
  low: 'bajo',
  least: 'mínimo',
  newest: (width) => `última ${width}`,
  none: 'sin probetas todavía',
  passed: 'pasa',
  failed: 'falla',
  coupons: (count) => counted('es', count, { one: 'probeta', other: 'probetas' }),
  one: (time, width, said) => `${time} ${width} ${said}`
}
