import { counted } from '../plural.js'
import type { YieldWords } from '../yield-words.js'

const count = (kits: number): string => counted('fr', kits, { one: 'trousse', many: 'de trousses', other: 'trousses' })

export const yields: YieldWords = {
  lot: (lot, real, kits) => `lot ${lot} : ${real} par trousse (${count(kits)})`,
  day: (date, real, kits) => `${date} : ${real} par trousse (${count(kits)})`,
  off: (amount, thin) => (thin ? `${amount} de plus que prévu : couche mince` : `${amount} de moins que prévu : couche épaisse ou mousse perdue`),
  left: (iso, resin) => `reste : iso ${iso}, résine ${resin}`,
  uneven: (name, iso, resin) =>
    `${name} se vide inégalement (reste iso ${iso}, résine ${resin}) : hors dosage. Arrêtez, contrôlez flexibles, pistolet et les deux parties, changez la buse, faites un essai`,
  used: (area) => `posé avec : ${area}`,
  next: 'trousse suivante : la mesurer et la déclarer : kit K2 iso 24 résine 23 mélangé',
  assumed: (name) => `trousse ${name} (celle en service : aucune n’a été nommée)`,
  wasEmpty: (name, at) => `la trousse ${name} était déclarée vide à ${at} : comptée avec elle quand même. Une autre trousse ? Annuler, et la nommer`,
  openTimeOfSheet: (amount) => `temps ouvert ${amount} selon la fiche de limites, non mesuré`
}
