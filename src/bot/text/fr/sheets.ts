import { counted } from '../plural.js'
import type { SheetsWords } from '../sheets-words.js'

export const sheets: SheetsWords = {
  courses: (count) => counted('fr', count, { one: 'rang', many: 'de rangs', other: 'rangs' }),
  rolls: (count) => counted('fr', count, { one: 'rouleau', many: 'de rouleaux', other: 'rouleaux' }),
  area: (amount) => `toiture ${amount}`,
  along: { x: 'feuilles le long de x, premier rang du côté bas y = 0', y: 'feuilles le long de y, premier rang du côté bas x = 0' },
  waste: (percent) => `${percent} de ce qui est acheté est chute`,
  leastRolls: (count) => `ces feuilles demandent au moins ${counted('fr', count, { one: 'rouleau', many: 'de rouleaux', other: 'rouleaux' })}`,
  joints: (count) => counted('fr', count, { one: 'joint d’about', many: 'de joints d’about', other: 'joints d’about' }),
  strips: (count, total) =>
    `${counted('fr', count, { one: 'bande de recouvrement', many: 'de bandes de recouvrement', other: 'bandes de recouvrement' })}, au total ${total}`,
  lengths: (list) => `couper les bandes : ${list}`,
  land: (amount) => `moindre largeur à souder d’une bande ${amount}`,
  patches: (count) => counted('fr', count, { one: 'pièce de renfort', many: 'de pièces de renfort', other: 'pièces de renfort' }),
  noPatches: 'aucune pièce de renfort',
  handPress: (count) =>
    `${counted('fr', count, { one: 'endroit', many: 'd’endroits', other: 'endroits' })} à presser à la main, où une bande passe sur un recouvrement`,
  weld: (robot, hand, laps) => `souder : robot ${robot}, dont recouvrements ${laps} ; à la main ${hand}`,
  kits: (kits, nozzles) =>
    `${counted('fr', kits, { one: 'trousse de colle', many: 'de trousses de colle', other: 'trousses de colle' })}, ${counted('fr', nozzles, { one: 'buse', many: 'de buses', other: 'buses' })}`,
  fasteners: (count) => `${counted('fr', count, { one: 'fixation', many: 'de fixations', other: 'fixations' })} aux pieds de relevés`,
  zones: (standard, list) => `zones selon ${standard} : ${list}`,
  standards: { en: 'EN 1991-1-4', asce: 'ASCE 7-22', nbcc: 'CNB' },
  noZones: {
    shape: 'zones : demander à l’ingénieur, la toiture n’est pas un rectangle',
    height: 'zones : demander à l’ingénieur, trop haut pour la norme',
    unknown: 'zones : donner la hauteur de la toiture : hauteur 8 m'
  },
  pattern: 'Le schéma de chaque zone est celui du fabricant ou de l’ingénieur.',
  roll: (numbers, cuts, left) => `${numbers} : ${cuts} ; reste ${left}`,
  cutList: 'rouleaux, coupés dans cet ordre',
  place: (number, x, y) => `${number} à ${x} ; ${y}`,
  patchPlaces: 'pièces de renfort, depuis 0,0',
  pressPlaces: 'presser à la main, bande et endroit depuis 0,0'
}
