import { counted } from '../plural.js'
import type { Text } from '../text.js'
import { ofTheTime, theTime } from './at-time.js'

export const day: Text['day'] = {
  opens: (rule) => `antes: ${rule}`,
  noLight: { before: 'todavía de noche', after: 'muy poca luz de día para cerrar' },
  lastSheet: (by, close) => `Última lámina puesta antes ${ofTheTime(by)}, todo soldado y empalmado antes ${ofTheTime(close)}`,
  noMore: (by, close) => `Ni una lámina más: la última tenía que estar antes ${ofTheTime(by)}, todo soldado y empalmado antes ${ofTheTime(close)}`,
  closing: { window: 'fin de las horas en que se puede', sunset: 'puesta del sol menos el cierre', rain: 'lluvia' },
  path: { sheet: 'lo que manda: pasar el rodillo, esperar y soldar esa lámina', backlog: 'lo que manda: soldaduras pendientes' },
  backlog: (robot, hand) => `por soldar: robot ${robot}, a mano ${hand}`,
  fits: (area, work) => `Caben: unos ${area}, lo más lento: ${work}`,
  ifKnown: (hours, area, first) =>
    `${hours} sin dato y sin contar: tomar lecturas. Si dicen que se puede:${first === null ? '' : ` primera pasada hacia ${theTime(first)},`}${area === null ? ' cabría más' : ` cabrían unos ${area}`}`,
  allUnknown: (hours) => `Todo en horas sin dato (${hours}): tomar lecturas antes de contar con ellas`,
  works: { spray: 'rociar', roll: 'pasar el rodillo', robot: 'soldar con robot', hand: 'soldar a mano' },
  stage: (list) => `Preparar: ${list}`,
  staged: {
    kits: (count) => counted('es', count, { one: 'juego', many: 'de juegos', other: 'juegos' }),
    nozzles: (count) => counted('es', count, { one: 'boquilla', many: 'de boquillas', other: 'boquillas' }),
    strips: (count) => counted('es', count, { one: 'tira cubrejunta', many: 'de tiras cubrejunta', other: 'tiras cubrejunta' })
  },
  warming: (count) => `${count} calentándose a la vez`,
  dry: (at) => `cubierta seca hacia ${theTime(at)}`,
  firstSpray: (at) => `primera pasada hacia ${theTime(at)}`,
  dew: (at) => `rocío desde ${theTime(at)}`,
  start: 'inicio del día',
  reminders: [
    'Bordes, huecos y claraboyas protegidos, accesos y puntos de anclaje revisados.',
    'Permiso de trabajo en caliente firmado, extintor y vigilante de fuego nombrados.',
    'Tomas de aire a sotavento localizadas, cerradas o tapadas; personas y vehículos de abajo apartados.',
    'Isocianatos: guantes, ojos, piel y respiración protegidos como dice la ficha de seguridad.',
    'Mandan las normas locales y el plan de la obra.'
  ],
  record: (date) => `registro del día, ${date}`,
  entries: (count) => counted('es', count, { one: 'anotación', other: 'anotaciones' }),
  crew: (gangs) =>
    `Según los ritmos de la hoja de límites, ${counted('es', gangs, { one: 'cuadrilla', many: 'de cuadrillas', other: 'cuadrillas' })}: poner ahí los propios.`
}
