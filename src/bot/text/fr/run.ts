import { counted } from '../plural.js'
import type { Text } from '../text.js'

export const run: Text['run'] = {
  ways: { stop: 'arrêter, dérouler et couvrir', follow: 'dérouler derrière le pistolet', flop: 'moitié de feuille rabattue' },
  reach: (list) => `portée : ${list}`,
  noLimit: 'sans limite',
  none: 'La mousse ne reste pas ouverte assez longtemps pour arrêter et couvrir : dérouler derrière le pistolet, ou attendre que le support soit plus froid.',
  gels: (stop, gel) => `un arrêt dure ${stop}, la mousse prend dans la buse après ${gel} : une buse neuve après chaque arrêt`,
  short: (needed, perKit) =>
    `Les buses manquent avant la mousse : il en faut environ ${counted('fr', needed, { one: 'buse', many: 'de buses', other: 'buses' })} par trousse, ${perKit} sont fournies.`,
  shortest: (openTime, every) => `temps ouvert le plus court ${openTime} : arrêter et maroufler tous les ${every}`
}
