import type { ClosingCheck, FindingId } from '../../answer.js'
import type { FindingWords } from '../text.js'

function measured(name: string): FindingWords {
  return { name, is: { go: name, caution: name, unknown: `${name}: sin dato`, 'no-go': name } }
}

export const findings: Readonly<Record<Exclude<FindingId, ClosingCheck>, FindingWords>> = {
  'kit-temperature': measured('juego'),
  'air-temperature': measured('aire'),
  'substrate-temperature': measured('sustrato'),
  'dew-margin': measured('margen al rocío'),
  humidity: measured('humedad'),
  'rain-now': { name: 'lluvia', is: { go: 'no llueve', caution: 'lluvia posible', unknown: 'lluvia: sin dato', 'no-go': 'está lloviendo' } },
  'rain-coming': measured('lluvia hasta cerrar'),
  'wind-mean': measured('viento medio'),
  'wind-gust': measured('racha'),
  daylight: {
    name: 'luz de día después de cerrar',
    is: {
      go: 'queda luz de día',
      caution: 'queda poca luz de día',
      unknown: 'luz de día: sin dato',
      'no-go': 'no hay luz de día bastante para cerrar'
    }
  },
  'substrate-dry': {
    name: 'sustrato seco',
    is: { go: 'sustrato seco', caution: 'sustrato apenas seco', unknown: 'sustrato seco: sin declarar', 'no-go': 'sustrato mojado' }
  },
  'fleece-dry': {
    name: 'fieltro seco',
    is: { go: 'fieltro seco', caution: 'fieltro apenas seco', unknown: 'fieltro seco: sin declarar', 'no-go': 'fieltro mojado' }
  },
  'seam-dry': {
    name: 'costura seca',
    is: { go: 'costura seca', caution: 'costura apenas seca', unknown: 'costura seca: sin declarar', 'no-go': 'costura mojada' }
  },
  'substrate-clean': {
    name: 'sustrato limpio',
    is: { go: 'sustrato limpio', caution: 'sustrato apenas limpio', unknown: 'sustrato limpio: sin declarar', 'no-go': 'sustrato sucio' }
  },
  'lap-clean': {
    name: 'traslape limpio',
    is: { go: 'traslape limpio', caution: 'traslape apenas limpio', unknown: 'traslape limpio: sin declarar', 'no-go': 'traslape sucio' }
  },
  compatibility: {
    name: 'lo que toca la lámina',
    is: {
      go: 'lo que toca la lámina es compatible',
      caution: 'lo que toca la lámina: consultar al fabricante',
      unknown: 'lo que toca la lámina: sin declarar',
      'no-go': 'lámina en contacto con algo que la daña'
    }
  },
  intakes: {
    name: 'tomas de aire',
    is: {
      go: 'sin tomas de aire cerca',
      caution: 'tomas de aire cerradas o tapadas',
      unknown: 'tomas de aire: sin declarar',
      'no-go': 'toma de aire abierta a favor del viento'
    }
  },
  'deck-moisture': {
    name: 'prueba de humedad del hormigón',
    is: {
      go: 'humedad del hormigón: prueba pasada',
      caution: 'humedad del hormigón cerca del límite',
      unknown: 'humedad del hormigón: sin prueba',
      'no-go': 'humedad del hormigón: prueba fallida'
    }
  },
  'sheet-relaxed': {
    name: 'lámina desenrollada desde hace',
    is: { go: 'lámina reposada', caution: 'lámina con poco reposo', unknown: 'lámina reposada: sin declarar', 'no-go': 'lámina todavía enrollada' }
  },
  'kit-mixed': {
    name: 'juego mezclado',
    is: { go: 'juego mezclado', caution: 'juego mezclado hace demasiado', unknown: 'juego mezclado: sin declarar', 'no-go': 'juego sin mezclar' }
  },
  'adhesive-date': {
    name: 'adhesivo: plazo hasta caducar',
    is: { go: 'adhesivo en fecha', caution: 'el adhesivo caduca pronto', unknown: 'caducidad del adhesivo: sin dato', 'no-go': 'adhesivo caducado' }
  },
  'start-up': {
    name: 'arranque',
    is: {
      go: 'arranque hecho',
      caution: 'arranque a medias',
      unknown: 'arranque: falta declarar',
      'no-go': 'arranque fallido: fuga, sin purgar, prueba mala o fuera de proporción'
    }
  },
  coupon: {
    name: 'probeta',
    is: { go: 'soldadoras habilitadas', caution: 'probeta cerca del límite', unknown: 'probeta: ninguna hoy', 'no-go': 'soldadora no habilitada' }
  },
  power: {
    name: 'caída de tensión',
    is: { go: 'tensión suficiente', caution: 'tensión cerca del límite', unknown: 'tensión: sin declarar hoy', 'no-go': 'caída de tensión excesiva' }
  },
  'traffic-wait': {
    name: 'tiempo desde que se colocó la lámina',
    is: {
      go: 'la lámina se puede pisar',
      caution: 'lámina recién colocada',
      unknown: 'tiempo desde que se colocó la lámina: sin dato',
      'no-go': 'lámina demasiado reciente para pisarla'
    }
  },
  thunder: { name: 'truenos', is: { go: 'sin truenos', caution: 'truenos previstos en 2 h', unknown: 'truenos: sin dato', 'no-go': 'truenos' } },
  heat: {
    name: 'índice de calor',
    is: { go: 'índice de calor', caution: 'calor', unknown: 'calor: sin dato', 'no-go': 'demasiado calor para la gente' }
  },
  cold: {
    name: 'sensación térmica',
    is: { go: 'sensación térmica', caution: 'frío', unknown: 'frío: sin dato', 'no-go': 'demasiado frío para la gente' }
  },
  ice: {
    name: 'superficie',
    is: { go: 'sin hielo', caution: 'hielo posible', unknown: 'hielo: sin dato', 'no-go': 'hielo: superficie helada y mojada' }
  },
  'strip-land': measured('soldadura útil a cada lado'),
  'strip-gap': { name: 'hueco', is: { go: 'hueco', caution: 'hueco', unknown: 'hueco: sin dato', 'no-go': 'los extremos se montan' } },
  'coupon-width': measured('ancho de soldadura'),
  'open-voids': {
    name: 'fallas pendientes',
    is: { go: 'ninguna falla pendiente', caution: 'fallas', unknown: 'fallas: sin dato', 'no-go': 'fallas pendientes' }
  },
  'test-spray': {
    name: 'prueba de espuma',
    is: {
      go: 'prueba de espuma buena',
      caution: 'prueba de espuma dudosa',
      unknown: 'prueba de espuma: sin juzgar',
      'no-go': 'prueba de espuma mala: parar'
    }
  }
}
