import type { HintWords } from '../hint-words.js'

export const hints: HintWords = {
  date: () => 'Écrire le jour ainsi : 2026-12-31 (année-mois-jour).',
  eitherDate: (said) => `De quel jour s’agit-il ? Écrire ${said}.`,
  clock: () => 'Écrire les heures ainsi : 07:00 ; l’horaire ainsi : 07:00-17:00.',
  fahrenheit: (said) => `Des Fahrenheit ? Écrire l’unité : ${said} F`,
  place: () =>
    'Écrire les coordonnées, latitude d’abord : 41.9,-87.6 ou 41.9 N, 87.6 O. Une carte les montre d’un appui long sur le lieu ou d’un clic droit.',
  siteName: () => 'Noms de chantiers : lettres de a à z, chiffres et traits d’union, sans espaces.',
  siteRoof: () => 'Un chantier ne garde pas son toit : donner le contour chaque fois.',
  noEntries: () => 'Rien n’a été noté ce jour-là.'
}
