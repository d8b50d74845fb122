import { counted } from '../plural.js'
import type { Text } from '../text.js'
import { theTime } from './at-time.js'

export const decision: Pick<Text, 'decision'> = {
  decision: {
    takeReading: 'prendre une mesure',
    group: (name, said) => `${name} : ${said}`,
    toState: (count) => counted('fr', count, { one: 'à déclarer', other: 'à déclarer' }),
    toRead: (count) => counted('fr', count, { one: 'mesure à prendre', many: 'de mesures à prendre', other: 'mesures à prendre' }),
    atLeast: (amount) => `au moins ${amount}`,
    atMost: (amount) => `au plus ${amount}`,
    below: (amount) => `doit rester sous ${amount}`,
    limit: (amount) => `limite ${amount}`,
    days: (count) => counted('fr', count, { one: 'jour', many: 'de jours', other: 'jours' }),
    tooOld: 'la dernière est trop vieille',
    forecast: 'prévision',
    model: 'estimation',
    tooClose: 'trop juste',
    tightest: (finding) => `le plus juste : ${finding}`,
    toSayStill: (words) => `reste à dire : ${words}`,
    changes: (at) => `peut changer vers ${theTime(at)}`,
    closeUp: 'La pluie arrive : fermer maintenant.',
    overridden: (reason) => `Un chef de chantier passe outre à la décision, c’est noté au registre : ${reason}`,
    numbers: {
      airC: 'air',
      rhPct: 'humidité',
      dewPointC: 'point de rosée',
      frostPointC: 'point de gelée',
      wetBulbC: 'bulbe humide',
      substrateC: 'support',
      dewMarginK: 'écart à la rosée',
      kitColdC: 'trousse, au plus froid',
      kitHotC: 'trousse, au plus chaud',
      windKmh: 'vent moyen',
      gustKmh: 'rafale',
      rainChancePct: 'risque de pluie',
      heatIndexC: 'indice de chaleur',
      windChillC: 'refroidissement éolien',
      daylightMin: 'jour restant après fermeture',
      wbgtC: 'WBGT',
      openTimeS: 'temps ouvert',
      reachM: 'portée d’une passe',
      stopEveryM: 'arrêter et maroufler tous les',
      sheetC: 'feuille',
      dropPct: 'chute de tension'
    }
  }
}
