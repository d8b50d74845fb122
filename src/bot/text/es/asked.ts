import type { AskedWords } from '../asked-words.js'
import { theTime } from './at-time.js'

export const asked: AskedWords = {
  deck: {
    dry: '✓ cubierta: declarada seca',
    likelyDry: '? cubierta: seca según el pronóstico, sin declarar: tocarla y decir seco o mojado',
    wet: '✕ cubierta: mojada',
    wetEarly: '✕ cubierta: mojada temprano según el pronóstico',
    unknown: '? cubierta: no se sabe si está seca: tocarla y decir seco o mojado',
    driesAt: (at) => `seca hacia ${theTime(at)}`,
    startsDry: '? cubierta: seca según el pronóstico'
  },
  rain: {
    falling: '✕ lluvia: está lloviendo',
    none: '✓ lluvia: ninguna en el pronóstico',
    from: (at) => `△ lluvia: prevista desde ${theTime(at)}`,
    unknown: '? lluvia: sin dato'
  },
  noThunder: '✓ truenos: ninguno en el pronóstico',
  byForecast: 'si no hay truenos'
}
