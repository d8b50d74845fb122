import type { Lang } from '../answer.js'

/** Forms of a counted noun. `many` is the form after a round million in Spanish and French: "1 000 000 de lés". */
export interface Forms {
  readonly one: string
  readonly many?: string
  readonly other: string
}

const rules: Readonly<Record<Lang, Intl.PluralRules>> = {
  en: new Intl.PluralRules('en'),
  es: new Intl.PluralRules('es'),
  fr: new Intl.PluralRules('fr')
}

/**
 * Digits are grouped from five on (10,000): a written-out 2,150 would be refused as ambiguous when typed back.
 * In French the group mark is a narrow space that does not break.
 */
const whole: Readonly<Record<Lang, Intl.NumberFormat>> = {
  en: new Intl.NumberFormat('en', { maximumFractionDigits: 1, useGrouping: 'min2' }),
  es: new Intl.NumberFormat('es', { maximumFractionDigits: 1, useGrouping: 'min2' }),
  fr: new Intl.NumberFormat('fr', { maximumFractionDigits: 1, useGrouping: 'min2' })
}

/** The form of a noun for a count, by the plural rules of CLDR. */
export function plural(lang: Lang, count: number, forms: Forms): string {
  const kind = rules[lang].select(count)
  if (kind === 'one') return forms.one
  return kind === 'many' ? (forms.many ?? forms.other) : forms.other
}

/** "1 void", "2 voids", "1 000 000 de défauts". */
export function counted(lang: Lang, count: number, forms: Forms): string {
  return `${whole[lang].format(count)} ${plural(lang, count, forms)}`
}
