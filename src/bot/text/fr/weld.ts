import { counted } from '../plural.js'
import type { WeldWords } from '../weld-words.js'

export const weld: WeldWords = {
  metres: (cleared, onHold, released) => `soudé : ${cleared} validés, ${onHold} en attente, ${released} libérés`,
  onHold: (metres) => `${metres} en attente`,
  newOnHold: (metres) => `dont ${metres} par ce message`,
  toRelease: 'pour libérer : tout sonder, découper jusqu’à deux bons, poser des pièces sur les coupes',
  cuts: (good, needed) => `prélèvements bons de suite : ${good} sur ${needed}`,
  probed: 'tout est sondé',
  notProbed: 'pas encore sondé',
  release: 'poser les pièces, puis : souder NOM libéré',
  goodCut: 'prélèvement bon',
  badCut: 'prélèvement mauvais',
  coupons: (count) => `sur ${counted('fr', count, { one: 'éprouvette', other: 'éprouvettes' })}`,
  tooFew: (count, least) => `trop peu d’éprouvettes pour le risque d’une étroite : ${count} sur ${least}`,
  falling: 'les largeurs baissent d’éprouvette en éprouvette',
  low: 'les dernières largeurs sont plus basses que le hasard ne le permet',
  shortIn: (coupons) => `à ce rythme étroite dans ${counted('fr', coupons, { one: 'éprouvette', other: 'éprouvettes' })}`,
  checkDrift: 'vérifier buse, rouleau, recouvrement et tension à l’outil avant qu’une éprouvette rate',
  tool: (volts, heat) => `à l’outil ${volts}, chaleur restante ${heat}`,
  generator: (watts) => `groupe pour cet outil : au moins ${watts} en continu`,
  section: (area, most) => `une rallonge de ${area} tient la chute à ${most} ou moins`
}
