/**
 * Words of one meaning in the three languages, parted by spaces. `sec(o,a,os,as)` stands for its four forms, `kit(,s)` for
 * kit and kits, `dew_point` for two words in a row.
 */
export interface Words {
  readonly en: string
  readonly es: string
  readonly fr: string
}

/** Every form that a list of words stands for, with accents, as people would write them. */
export function formsOf(list: string): readonly string[] {
  return list
    .split(' ')
    .filter((word) => word !== '')
    .flatMap((word) => {
      const cut = word.replaceAll('_', ' ')
      const open = cut.indexOf('(')
      if (open < 0) return [cut]
      const close = cut.indexOf(')', open)
      return cut
        .slice(open + 1, close)
        .split(',')
        .map((ending) => cut.slice(0, open) + ending + cut.slice(close + 1))
    })
}

export function allForms(words: Words): readonly string[] {
  return [...formsOf(words.en), ...formsOf(words.es), ...formsOf(words.fr)]
}
