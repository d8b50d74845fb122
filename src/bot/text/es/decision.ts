import { counted } from '../plural.js'
import type { Text } from '../text.js'
import { theTime } from './at-time.js'

export const decision: Pick<Text, 'decision'> = {
  decision: {
    takeReading: 'tomar una lectura',
    group: (name, said) => `${name}: ${said}`,
    toState: (count) => counted('es', count, { one: 'por declarar', other: 'por declarar' }),
    toRead: (count) => counted('es', count, { one: 'lectura por tomar', many: 'de lecturas por tomar', other: 'lecturas por tomar' }),
    atLeast: (amount) => `mínimo ${amount}`,
    atMost: (amount) => `máximo ${amount}`,
    below: (amount) => `debe ser menos de ${amount}`,
    limit: (amount) => `límite ${amount}`,
    days: (count) => counted('es', count, { one: 'día', many: 'de días', other: 'días' }),
    tooOld: 'la última es demasiado vieja',
    forecast: 'pronóstico',
    model: 'estimado',
    tooClose: 'demasiado justo',
    tightest: (finding) => `lo más justo: ${finding}`,
    toSayStill: (words) => `falta decir: ${words}`,
    changes: (at) => `puede cambiar hacia ${theTime(at)}`,
    closeUp: 'Viene lluvia: cerrar ahora.',
    overridden: (reason) => `Un supervisor sigue adelante contra la decisión, queda en el registro: ${reason}`,
    numbers: {
      airC: 'aire',
      rhPct: 'humedad',
      dewPointC: 'punto de rocío',
      frostPointC: 'punto de escarcha',
      wetBulbC: 'bulbo húmedo',
      substrateC: 'sustrato',
      dewMarginK: 'margen al rocío',
      kitColdC: 'juego, lo más frío',
      kitHotC: 'juego, lo más caliente',
      windKmh: 'viento medio',
      gustKmh: 'racha',
      rainChancePct: 'probabilidad de lluvia',
      heatIndexC: 'índice de calor',
      windChillC: 'sensación térmica',
      daylightMin: 'luz de día después de cerrar',
      wbgtC: 'WBGT',
      openTimeS: 'tiempo abierto',
      reachM: 'alcance de una pasada',
      stopEveryM: 'parar y pasar rodillo cada',
      sheetC: 'lámina',
      dropPct: 'caída de tensión'
    }
  }
}
