import type { StillWords } from '../still-words.js'
import { theTime } from './at-time.js'

export const still: StillWords = {
  punch: (numbers) => `lista de pendientes: ${numbers}`,
  sealOpen: (edge) => `cierre de fin de jornada: ${edge} de borde abierto`,
  sealUnstated: 'cierre de fin de jornada: sin decir',
  drainsShut: 'desagües: no están abiertos',
  drainsUnstated: 'desagües: sin decir',
  sheetsLoose: 'láminas sueltas: sin enrollar ni lastrar',
  sheetsUnstated: 'láminas sueltas: sin decir',
  bond: {
    unstated: (substrate) => `cuadro de prueba sobre ${substrate}: ninguno hoy`,
    failed: (substrate) => `cuadro de prueba sobre ${substrate}: rechazado`,
    unjudged: (substrate) => `cuadro de prueba sobre ${substrate}: aún sin pelar`
  },
  details: { bad: (kinds) => `detalles por reparar: ${kinds}`, unchecked: (kinds) => `detalles sin revisar: ${kinds}` },
  fireUntil: (at) => `vigilancia de fuego hasta ${theTime(at)}`,
  fireUnsigned: 'vigilancia de fuego: nadie dijo que se mantuvo hasta el final'
}
