import type { StillWords } from '../still-words.js'
import { untilTheTime } from './at-time.js'

export const still: StillWords = {
  punch: (numbers) => `réserves : ${numbers}`,
  sealOpen: (edge) => `joint de nuit : ${edge} de bord ouvert`,
  sealUnstated: 'joint de nuit : pas déclaré',
  drainsShut: 'évacuations : pas ouvertes',
  drainsUnstated: 'évacuations : pas déclarées',
  sheetsLoose: 'feuilles volantes : ni enroulées ni lestées',
  sheetsUnstated: 'feuilles volantes : pas déclarées',
  bond: {
    unstated: (substrate) => `carré d’essai sur ${substrate} : aucun aujourd’hui`,
    failed: (substrate) => `carré d’essai sur ${substrate} : mauvais`,
    unjudged: (substrate) => `carré d’essai sur ${substrate} : pas encore pelé`
  },
  details: { bad: (kinds) => `détails à réparer : ${kinds}`, unchecked: (kinds) => `détails pas vérifiés : ${kinds}` },
  fireUntil: (at) => `surveillance incendie ${untilTheTime(at)}`,
  fireUnsigned: 'surveillance incendie : personne n’a dit qu’elle a été tenue jusqu’au bout'
}
