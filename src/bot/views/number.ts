import type { How } from './how.js'

/** Spanish and French of the United States and Canada where a person works in US units: `1.5`, not `1,5`, in Spanish. */
const locales = {
  metric: { en: 'en', es: 'es', fr: 'fr' },
  us: { en: 'en-US', es: 'es-US', fr: 'fr-CA' }
} as const

/** Formatters are slow to build: one of each is kept. At most 3 languages × 2 systems × 7 precisions. */
const kept = new Map<string, Intl.NumberFormat>()

/** A number in the person's language with at most `decimals` (0 … 6) places. Groups only from five digits on, so that it can be typed back. */
export function numeral(value: number, decimals: number, how: Pick<How, 'lang' | 'units'>): string {
  const locale = locales[how.units][how.lang]
  const key = `${locale} ${decimals}`
  let format = kept.get(key)
  if (format === undefined) {
    format = new Intl.NumberFormat(locale, { maximumFractionDigits: decimals, useGrouping: 'min2', signDisplay: 'negative' })
    kept.set(key, format)
  }
  return format.format(value)
}
