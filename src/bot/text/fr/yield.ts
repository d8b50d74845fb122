import { counted } from '../plural.js'
import type { YieldWords } from '../yield-words.js'

const count = (kits: number): string => counted('fr', kits, { one: 'trousse', many: 'de trousses', other: 'trousses' })

export const yields: YieldWords = {
  lot: (lot, real, kits) => `lot ${lot} : ${real} par trousse (${count(kits)})`,
  day: (date, real, kits) => `${date} : ${real} par trousse (${count(kits)})`,
  off: (amount) => `${amount} par rapport au prévu`,
  left: (iso, resin) => `reste : iso ${iso}, résine ${resin}`,
  uneven: (name, iso, resin) =>
    `${name} se vide inégalement (reste iso ${iso}, résine ${resin}) : hors dosage. Arrêtez, contrôlez flexibles, pistolet et les deux parties, changez la buse, faites un essai`
}
