import type { Text } from '../text.js'

export const takeoff: Text['takeoff'] = {
  title: (site) => `Medición de ${site}`,
  items: {
    rolls: 'rollos',
    bareBack: 'rollos sin fieltro',
    kits: 'juegos',
    nozzles: 'boquillas',
    patches: 'parches',
    cleaner: 'limpiador de juntas',
    fasteners: 'fijaciones en las bases',
    bars: 'perfiles en las bases',
    weight: 'peso acopiado',
    pressure: 'carga del acopio'
  },
  units: { piece: 'unidades', m: 'm', m2: 'm²', mm: 'mm', l: 'l', kg: 'kg', kPa: 'kPa', '%': '%', 'kg/m2': 'kg/m²', 'm/l': 'm/l', 'kN/kg': 'kN/kg' },
  heads: {
    item: 'partida',
    amount: 'cantidad',
    unit: 'unidad',
    sum: 'cálculo',
    packs: 'envases a comprar',
    pack: 'por envase',
    left: 'falta por colocar'
  },
  zone: (name) => `zona ${name}`,
  base: (ring) => (ring === 0 ? 'borde del techo' : `abertura ${ring}`),
  waste: (percent) => `+ ${percent} de merma`,
  roundedUp: 'hasta el entero',
  spaced: (spacing, first) => `cada ${spacing} como máximo, la primera a ${first} de la esquina`,
  asCut: (count, least) => `según el corte de rollos: ${count}, ningún plan necesita menos de ${least}`,
  limitNotSaid: 'No se dijo el límite del ingeniero para la cubierta: desconocido.',
  engineers: 'El patrón de las zonas, la separación de fijaciones y la carga sobre la cubierta son del ingeniero.',
  page: ['página', 'de'],
  plan: 'Plano',
  table: 'Medición'
}
