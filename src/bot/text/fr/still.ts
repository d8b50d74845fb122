import type { StillWords } from '../still-words.js'

export const still: StillWords = {
  punch: (numbers) => `liste des réserves : ${numbers}`,
  sealOpen: (edge) => `mise hors d’eau : ${edge} de bord ouvert`,
  sealUnstated: 'mise hors d’eau : non dite',
  drainsShut: 'évacuations : pas ouvertes',
  drainsUnstated: 'évacuations : non dites',
  sheetsLoose: 'feuilles libres : ni enroulées ni lestées',
  sheetsUnstated: 'feuilles libres : non dites',
  bond: {
    unstated: (substrate) => `carré d’essai sur ${substrate} : aucun aujourd’hui`,
    failed: (substrate) => `carré d’essai sur ${substrate} : mauvais`,
    unjudged: (substrate) => `carré d’essai sur ${substrate} : pas encore pelé`
  },
  fireUntil: (at) => `garde incendie jusqu’à ${at}`,
  fireUnsigned: 'garde incendie : personne n’a dit qu’elle a été tenue jusqu’au bout'
}
