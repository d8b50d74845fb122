import { counted, plural } from '../plural.js'
import type { Text } from '../text.js'

export const roofPicture: Text['roofPicture'] = {
  title: (site) => `Techo de ${site}`,
  stripTitle: (sheets) => plural('es', sheets, { one: 'Tira cubrejunta', other: `Tira cubrejunta sobre ${sheets} láminas` }),
  size: (width, depth) => `${width} × ${depth}`,
  courses: (count, along) => `${many(count, 'hilera', 'hileras')} según ${along}`,
  lowSide: 'lado bajo',
  north: 'N',
  northUp: 'norte arriba',
  rolls: (count) => many(count, 'rollo', 'rollos'),
  joints: (count) => many(count, 'junta a tope', 'juntas a tope'),
  strips: (count) => many(count, 'tira', 'tiras'),
  patches: (count) => many(count, 'parche', 'parches'),
  handPress: (count) => `apretar a mano: ${many(count, 'lugar', 'lugares')}`,
  openings: (count) => many(count, 'abertura', 'aberturas'),
  zones: (standard) => `zonas de viento ${standard}`,
  zone: (name, area, width) => (width === null ? `${name}: ${area}` : `${name}: ${area}, ancho ${width}`),
  zonesEngineer: 'zonas de viento: preguntar al ingeniero',
  zonesUnknown: 'zonas de viento: falta la altura',
  patternEngineer: 'el patrón es del ingeniero',
  openVoids: (count) => many(count, 'falla abierta', 'fallas abiertas'),
  voidAt: (number, x, y) => `falla ${number} en ${x}, ${y}`,
  notNumbered: (count) => `${many(count, 'parche', 'parches')} sin lugar aquí para su número`,
  cuts: 'en cada lámina: su rollo y el largo a cortar',
  notToScale: 'sin escala',
  gap: 'hueco',
  land: 'apoyo',
  least: 'mínimo',
  off: 'descentrado',
  pastLap: 'más allá del traslape',
  toEdge: 'hasta el borde',
  radius: 'esquinas r',
  lap: 'traslape',
  sheet: 'lámina',
  edge: 'borde',
  weld: 'soldadura alrededor'
}

function many(count: number, one: string, other: string): string {
  return counted('es', count, { one, many: `de ${other}`, other })
}
