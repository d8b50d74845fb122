import type { FirstWords } from '../first-words.js'

export const first: FirstWords = {
  glueNoMore: (substrates) => `ne plus coller : carré d’essai sur ${substrates} mauvais`,
  otherwise: (headline) => `à part cela : ${headline}`,
  noVoids: (welded) => `aucun défaut noté ; que ${welded} ont été sondés n’est pas au registre`,
  noWelds: 'aucun défaut noté, aucune soudure non plus : rien de connu',
  stepsUnsaid: 'étapes de la réparation pas dites',
  passedWarm: 'sondé bon à chaud',
  sameVoid: (n) => `même endroit que le défaut ${n} : annuler si c’est le même`,
  noCourse: (most) => `pas de tel rang : au plus ${most} sur une toiture de cette taille`,
  beyondRoof: (side) => `hors de la toiture : son plus long côté fait ${side}`,
  sameLaid: (at) => `la même chose a été notée, datée ${at} : annuler si c’est la même`,
  noHeat: 'rien de connu de la chaleur',
  heat: 'mètres, éprouvettes et réparations comptent comme chaleur ; pour toute autre dire fire chaleur avec l’heure : fire chaleur @14:30'
}
