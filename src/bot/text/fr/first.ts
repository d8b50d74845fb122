import type { FirstWords } from '../first-words.js'

export const first: FirstWords = {
  glueNoMore: (substrates) => `ne plus coller : carré d’essai sur ${substrates} mauvais`,
  otherwise: (headline) => `à part cela : ${headline}`,
  noVoids: (welded) => `aucun défaut noté ; que ${welded} ont été sondés n’est pas au registre`,
  noWelds: 'aucun défaut noté, aucune soudure non plus : rien de connu',
  noHeat: 'rien de connu de la chaleur',
  heat: 'mètres, éprouvettes et réparations comptent comme chaleur ; pour toute autre dire fire chaleur avec l’heure : fire chaleur @14:30'
}
