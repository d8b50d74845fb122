import { counted } from '../plural.js'
import type { Text } from '../text.js'
import { theTime } from './at-time.js'

export const day: Text['day'] = {
  opens: (rule) => `avant : ${rule}`,
  noLight: { before: 'encore nuit', after: 'trop peu de jour pour fermer' },
  lastSheet: (by, close) => `Dernière feuille posée avant ${theTime(by)}, tout soudé et raccordé avant ${theTime(close)}`,
  noMore: (by, close) => `Plus aucune feuille : la dernière devait être posée avant ${theTime(by)}, tout soudé et raccordé avant ${theTime(close)}`,
  closing: { window: 'fin des heures possibles', sunset: 'coucher du soleil moins la fermeture', rain: 'pluie' },
  path: { sheet: 'ce qui décide : maroufler, attendre et souder cette feuille', backlog: 'ce qui décide : soudures en retard' },
  backlog: (robot, hand) => `reste à souder : robot ${robot}, à la main ${hand}`,
  fits: (area, work) => `Faisable : environ ${area}, le plus lent : ${work}`,
  ifKnown: (hours, area, first) =>
    `${hours} inconnu et pas compté : prendre des mesures. Si elles disent oui :${first === null ? '' : ` première passe vers ${first},`}${area === null ? ' davantage serait faisable' : ` environ ${area} faisables`}`,
  allUnknown: (hours) => `Le tout en heures inconnues (${hours}) : prendre des mesures avant d’y compter`,
  works: { spray: 'pulvériser', roll: 'maroufler', robot: 'souder au robot', hand: 'souder à la main' },
  stage: (list) => `Préparer : ${list}`,
  staged: {
    kits: (count) => counted('fr', count, { one: 'trousse', many: 'de trousses', other: 'trousses' }),
    nozzles: (count) => counted('fr', count, { one: 'buse', many: 'de buses', other: 'buses' }),
    strips: (count) => counted('fr', count, { one: 'bande de recouvrement', many: 'de bandes de recouvrement', other: 'bandes de recouvrement' })
  },
  warming: (count) => `${count} à chauffer en même temps`,
  dry: (at) => `support sec vers ${theTime(at)}`,
  firstSpray: (at) => `première passe vers ${theTime(at)}`,
  dew: (at) => `rosée dès ${theTime(at)}`,
  start: 'début de journée',
  reminders: [
    'Rives, ouvertures et lanterneaux protégés, accès et points d’ancrage vérifiés.',
    'Permis de feu signé, extincteur et surveillant désignés.',
    'Prises d’air sous le vent repérées, fermées ou masquées ; personnes et véhicules en bas éloignés.',
    'Isocyanates : gants, yeux, peau et respiration protégés selon la fiche de sécurité.',
    'Les règles locales et le plan du chantier passent avant.'
  ],
  record: (date) => `registre du jour, ${date}`,
  entries: (count) => counted('fr', count, { one: 'inscription', other: 'inscriptions' }),
  crew: (gangs) =>
    `D’après les cadences de la fiche de limites, ${counted('fr', gangs, { one: 'équipe', many: 'd’équipes', other: 'équipes' })} : y mettre les vôtres.`
}
