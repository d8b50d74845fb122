import { counted, plural } from '../plural.js'
import type { Text } from '../text.js'

export const roofPicture: Text['roofPicture'] = {
  title: (site) => `Toiture de ${site}`,
  stripTitle: (sheets) => plural('fr', sheets, { one: 'Bande de recouvrement', other: `Bande de recouvrement sur ${sheets} feuilles` }),
  size: (width, depth) => `${width} × ${depth}`,
  courses: (count, along) => `${many(count, 'rang', 'rangs')} selon ${along}`,
  lowSide: 'côté bas',
  north: 'N',
  northUp: 'nord en haut',
  rolls: (count) => many(count, 'rouleau', 'rouleaux'),
  joints: (count) => many(count, 'joint d’about', 'joints d’about'),
  strips: (count) => many(count, 'bande', 'bandes'),
  patches: (count) => many(count, 'pièce de renfort', 'pièces de renfort'),
  handPress: (count) => `presser à la main : ${many(count, 'endroit', 'endroits')}`,
  openings: (count) => many(count, 'ouverture', 'ouvertures'),
  zones: (standard) => `zones de vent ${standard}`,
  zone: (name, area, width) => (width === null ? `${name}: ${area}` : `${name}: ${area}, largeur ${width}`),
  zonesEngineer: 'zones de vent : demander à l’ingénieur',
  zonesUnknown: 'zones de vent : hauteur non dite',
  patternEngineer: 'le schéma revient à l’ingénieur',
  openVoids: (count) => many(count, 'défaut ouvert', 'défauts ouverts'),
  voidAt: (number, x, y) => `défaut ${number} à ${x}, ${y}`,
  notNumbered: (count) => `${many(count, 'pièce', 'pièces')} sans place ici pour son numéro`,
  cuts: 'sur une feuille : son rouleau et la longueur à couper',
  notToScale: 'hors échelle',
  gap: 'écart',
  land: 'portée',
  least: 'minimum',
  off: 'décalage',
  pastLap: 'au-delà du recouvrement',
  toEdge: 'jusqu’au bord',
  radius: 'coins r',
  lap: 'recouvrement',
  sheet: 'feuille',
  edge: 'bord',
  weld: 'soudure tout autour'
}

function many(count: number, one: string, other: string): string {
  return counted('fr', count, { one, many: `de ${other}`, other })
}
