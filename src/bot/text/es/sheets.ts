import { counted } from '../plural.js'
import type { SheetsWords } from '../sheets-words.js'

export const sheets: SheetsWords = {
  courses: (count) => counted('es', count, { one: 'hilera', many: 'de hileras', other: 'hileras' }),
  rolls: (count) => counted('es', count, { one: 'rollo', many: 'de rollos', other: 'rollos' }),
  area: (amount) => `techo ${amount}`,
  along: { x: 'láminas a lo largo de x, primera hilera en el lado bajo y = 0', y: 'láminas a lo largo de y, primera hilera en el lado bajo x = 0' },
  waste: (percent) => `${percent} de lo comprado es recorte`,
  leastRolls: (count) => `estas láminas necesitan al menos ${counted('es', count, { one: 'rollo', many: 'de rollos', other: 'rollos' })}`,
  joints: (count) => counted('es', count, { one: 'junta a tope', many: 'de juntas a tope', other: 'juntas a tope' }),
  strips: (count, total) =>
    `${counted('es', count, { one: 'tira cubrejunta', many: 'de tiras cubrejunta', other: 'tiras cubrejunta' })}, en total ${total}`,
  lengths: (list) => `cortar tiras: ${list}`,
  land: (amount) => `menor soldadura útil de una tira ${amount}`,
  patches: (count) => counted('es', count, { one: 'parche', many: 'de parches', other: 'parches' }),
  noPatches: 'sin parches',
  handPress: (count) =>
    `${counted('es', count, { one: 'lugar', many: 'de lugares', other: 'lugares' })} para presionar a mano, donde una tira cruza un traslape`,
  weld: (robot, hand, laps) => `soldar: robot ${robot}, de ello traslapes ${laps}; a mano ${hand}`,
  kits: (kits, nozzles) =>
    `${counted('es', kits, { one: 'juego de adhesivo', many: 'de juegos de adhesivo', other: 'juegos de adhesivo' })}, ${counted('es', nozzles, { one: 'boquilla', many: 'de boquillas', other: 'boquillas' })}`,
  fasteners: (count) => `${counted('es', count, { one: 'fijación', many: 'de fijaciones', other: 'fijaciones' })} en los arranques`,
  zones: (standard, list) => `zonas según ${standard}: ${list}`,
  standards: { en: 'EN 1991-1-4', asce: 'ASCE 7-22', nbcc: 'NBCC' },
  noZones: {
    shape: 'zonas: consultar al ingeniero, el techo no es un rectángulo',
    height: 'zonas: consultar al ingeniero, demasiado alto para la norma',
    unknown: 'zonas: decir la altura del techo: altura 8 m'
  },
  pattern: 'El patrón de cada zona es del fabricante o del ingeniero.',
  roll: (numbers, cuts, left) => `${numbers}: ${cuts}; sobra ${left}`,
  cutList: 'rollos, cortados en este orden',
  place: (number, x, y) => `${number} en ${x}; ${y}`,
  patchPlaces: 'parches, desde 0,0',
  pressPlaces: 'presionar a mano, tira y lugar desde 0,0'
}
