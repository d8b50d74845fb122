import type { Text } from '../text.js'

export const takeoff: Text['takeoff'] = {
  title: (site) => `Métré de ${site}`,
  items: {
    rolls: 'rouleaux',
    bareBack: 'rouleaux sans feutre',
    kits: 'trousses',
    nozzles: 'buses',
    patches: 'pièces de renfort',
    cleaner: 'nettoyant de joints',
    fasteners: 'fixations en pied',
    bars: 'profilés en pied',
    weight: 'poids entreposé',
    pressure: 'charge d’entreposage'
  },
  units: { piece: 'unités', m: 'm', m2: 'm²', mm: 'mm', l: 'l', kg: 'kg', kPa: 'kPa', '%': '%', 'kg/m2': 'kg/m²', 'm/l': 'm/l', 'kN/kg': 'kN/kg' },
  heads: {
    item: 'poste',
    amount: 'quantité',
    unit: 'unité',
    sum: 'calcul',
    packs: 'emballages à acheter',
    pack: 'par emballage',
    left: 'reste à poser'
  },
  zone: (name) => `zone ${name}`,
  base: (ring) => (ring === 0 ? 'rive de la toiture' : `ouverture ${ring}`),
  waste: (percent) => `+ ${percent} de perte`,
  roundedUp: 'à l’entier supérieur',
  spaced: (spacing, first) => `tous les ${spacing} au plus, la première à ${first} du coin`,
  asCut: (count, least) => `selon la coupe des rouleaux : ${count}, aucun plan n’en demande moins de ${least}`,
  limitNotSaid: 'La limite de l’ingénieur pour le support n’a pas été dite : inconnue.',
  engineers: 'Le schéma des zones, l’entraxe des fixations et la charge sur le support reviennent à l’ingénieur.',
  page: ['page', 'sur'],
  plan: 'Plan',
  table: 'Métré'
}
