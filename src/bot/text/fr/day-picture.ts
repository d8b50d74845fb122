import type { Text } from '../text.js'

export const dayPicture: Text['dayPicture'] = {
  inventedWeek: 'semaine inventée',
  activities: { spray: 'pulvér.', lay: 'poser', weld: 'souder', people: 'pers.' },
  lines: { airC: 'air', dewPointC: 'rosée', substrateC: 'support', windKmh: 'vent', gustKmh: 'rafale' },
  rain: 'pluie',
  chance: 'risque',
  now: (time) => `maintenant ${time}`,
  title: (site, date) => `La journée de ${site}, ${date}`,
  at: (amount, time) => `${amount} à ${time}`,
  notJudged: 'non évalué',
  notKnown: 'inconnu',
  noRain: 'pas de pluie',
  sunrise: (time) => `lever du soleil ${time}`,
  sunset: (time) => `coucher du soleil ${time}`,
  sunUp: 'le soleil ne se couche pas',
  sunDown: 'le soleil ne se lève pas'
}
