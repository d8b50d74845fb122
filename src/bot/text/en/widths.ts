import { counted } from '../plural.js'
import type { WidthsWords } from '../widths-words.js'

export const widths: WidthsWords = {
  title: (welder) => `${welder}: coupon widths`,
  mean: 'mean',
  high: 'high',
  low: 'low',
  least: 'least',
  newest: (width) => `last ${width}`,
  none: 'no coupons yet',
  passed: 'passed',
  failed: 'failed',
  coupons: (count) => counted('en', count, { one: 'coupon', other: 'coupons' }),
  one: (time, width, said) => `${time} ${width} ${said}`
}
