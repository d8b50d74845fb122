/** What the room itself says of a field, before the app sees it: in the language the page is set to. */
export interface Words {
  readonly empty: string
  readonly number: string
  readonly whole: string
  readonly short: (least: number) => string
  readonly long: (most: number) => string
  readonly least: (bound: string) => string
  readonly most: (bound: string) => string
}

const en: Words = {
  empty: 'Please fill this in.',
  number: 'Please write a number, such as 12.5.',
  whole: 'Please write a whole number.',
  short: (least) => `At least ${least} characters.`,
  long: (most) => `At most ${most} characters.`,
  least: (bound) => `No less than ${bound}.`,
  most: (bound) => `No more than ${bound}.`
}

const es: Words = {
  empty: 'Rellene este campo.',
  number: 'Escriba un número, por ejemplo 12,5.',
  whole: 'Escriba un número entero.',
  short: (least) => `Al menos ${least} caracteres.`,
  long: (most) => `Como máximo ${most} caracteres.`,
  least: (bound) => `No menos de ${bound}.`,
  most: (bound) => `No más de ${bound}.`
}

const fr: Words = {
  empty: 'Remplissez ce champ.',
  number: 'Écrivez un nombre, par exemple 12,5.',
  whole: 'Écrivez un nombre entier.',
  short: (least) => `Au moins ${least} caractères.`,
  long: (most) => `Au plus ${most} caractères.`,
  least: (bound) => `Pas moins de ${bound}.`,
  most: (bound) => `Pas plus de ${bound}.`
}

export function wordsOf(lang: string | null): Words {
  return lang === 'es' ? es : lang === 'fr' ? fr : en
}
