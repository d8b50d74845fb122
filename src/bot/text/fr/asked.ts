import type { AskedWords } from '../asked-words.js'
import { theTime } from './at-time.js'

export const asked: AskedWords = {
  deck: {
    dry: '✓ toit : déclaré sec',
    likelyDry: '? toit : sec d’après la prévision, pas déclaré : le toucher, puis dire sec ou mouillé',
    wet: '✕ toit : mouillé',
    wetEarly: '✕ toit : mouillé tôt, d’après la prévision',
    unknown: '? toit : sec ou non, on ne sait pas : le toucher, puis dire sec ou mouillé',
    driesAt: (at) => `sec vers ${theTime(at)}`,
    startsDry: '? toit : sec d’après la prévision'
  },
  rain: {
    falling: '✕ pluie : il pleut',
    none: '✓ pluie : aucune de prévue',
    from: (at) => `△ pluie : prévue à partir de ${theTime(at)}`,
    unknown: '? pluie : pas de donnée'
  },
  noThunder: '✓ tonnerre : aucun de prévu',
  byForecast: 's’il n’y a pas de tonnerre'
}
