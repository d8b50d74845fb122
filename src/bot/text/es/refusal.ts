import type { RefusalWords, Wrong } from '../text.js'

function of({ word, label }: Wrong): string {
  if (word === null) return label ?? 'una palabra'
  return label === null ? word : `${word} (${label})`
}

export const refusal: RefusalWords = {
  codes: {
    empty: () => 'No había nada que leer.',
    'too-long': () => 'Demasiado largo: 2000 caracteres como máximo.',
    'unknown-command': (wrong) => `Comando desconocido: ${of(wrong)}.`,
    'unknown-word': (wrong) => `No se entendió: ${of(wrong)}.`,
    missing: (wrong) => `Falta: ${wrong.label ?? of(wrong)}.`,
    'bad-number': (wrong) => `No se lee como número: ${of(wrong)}.`,
    'ambiguous-number': (wrong) => `Número ambiguo: ${of(wrong)}.${wrong.whole === null ? '' : ` Escribir ${wrong.whole} o ${wrong.decimal}.`}`,
    'wrong-unit': (wrong) => `Unidad equivocada: ${of(wrong)}.`,
    'out-of-range': (wrong) => `Fuera de rango: ${of(wrong)}${range(wrong)}${stated(wrong)}.`,
    inconsistent: (wrong) => `No concuerda: ${of(wrong)}${wrong.other === null ? '' : ` y ${wrong.other}`}${stated(wrong)}.`,
    duplicate: (wrong) => `Dado dos veces con dos valores: ${of(wrong)}.`,
    'not-found': (wrong) => `No existe: ${of(wrong)}.`,
    'wrong-state': (wrong) => `Ahora no es posible: ${of(wrong)}${wrong.state === null ? '' : `, ${wrong.state}`}.`,
    'not-allowed': (wrong) => (wrong.who === null ? `No permitido: ${of(wrong)}.` : `No permitido: solo para ${wrong.who}.`),
    'no-site': (wrong) => (wrong.word === null ? 'No está claro qué obra.' : `No existe esa obra: ${wrong.word}.`),
    'bad-option': (wrong) => `Opción equivocada: ${of(wrong)}.`,
    config: (wrong) => `Ajustes equivocados: ${of(wrong)}.`,
    store: (wrong) => `No se alcanza el registro${wrong.word === null ? '' : `: ${wrong.word}`}.`,
    'weather-file': (wrong) => `No se lee el archivo del tiempo: ${of(wrong)}.`,
    internal: (wrong) => `Algo falló por dentro${wrong.ref === null ? '' : `, referencia ${wrong.ref}`}.`
  },
  next: {
    empty: 'Escribir ayuda para la lista de comandos.',
    'too-long': 'Escribir menos, en varios mensajes.',
    'unknown-command': 'Escribir ayuda para la lista de comandos.',
    'unknown-word': null,
    missing: null,
    'bad-number': 'Escribir cifras, una coma o un punto: 12,5',
    'ambiguous-number': null,
    'wrong-unit': null,
    'out-of-range': 'Revisar el valor y su unidad.',
    inconsistent: null,
    duplicate: 'Darlo una sola vez.',
    'not-found': null,
    'wrong-state': null,
    'not-allowed': 'Pedirlo a un supervisor.',
    'no-site': 'Preguntar en el canal de la obra, o crear una: empezar NOMBRE a LAT,LON zona ZONA',
    'bad-option': null,
    config: 'Corregir los ajustes y arrancar otra vez.',
    store: 'Intentar otra vez. Si sigue, avisar a quien lleva el bot.',
    'weather-file': 'Dar un archivo de pronóstico de una fuente conocida.',
    internal: 'Avisar a quien lleva el bot, con la referencia.'
  },
  nameSite: 'Nombrarla: --site NOMBRE. O crear una: empezar NOMBRE a LAT,LON zona ZONA',
  nothingLogged: 'No se anotó nada.',
  understood: (list) => `Entendido: ${list}`,
  nearest: (list) => `¿Quiso decir ${list}?`,
  sites: (list) => `Obras: ${list}`,
  who: { supervisor: 'supervisores', supervisors: 'supervisores', author: 'quien lo anotó', crew: 'la cuadrilla' },
  states: {
    crossing: 'los lados se cruzan, se tocan o vuelven atrás',
    'meets-edge': 'la abertura toca el borde del techo',
    'meets-opening': 'las aberturas se tocan o se solapan',
    outside: 'queda fuera del techo',
    'within-opening': 'queda dentro de otra abertura',
    'corners-few': 'tres esquinas como mínimo',
    'side-short': 'un lado mide menos de 10 mm',
    flat: 'no tiene área',
    'too-large': 'demasiado grande para repartir',
    'sheet-wide': 'la lámina es más ancha que el techo',
    'lap-wide': 'el traslape debe ser menor que media lámina',
    'roll-short': 'el rollo debe medir 1 m como mínimo',
    'gap-wide': 'el hueco es tan ancho como la tira',
    'patch-layers': 'los parches empiezan en tres capas',
    'nothing-on-hold': 'no hay nada retenido',
    'not-probed': 'antes repasar con punzón todo lo retenido: soldar NOMBRE repasado',
    'no-good-cuts': 'antes cortar hasta dos testigos buenos: soldar NOMBRE testigo ANCHO PELADO',
    'open-voids': 'quedan fallas abiertas: primero reparar y repasar',
    taken: 'es de otra obra',
    closed: 'está cerrada',
    exists: 'ya hay una',
    undone: 'ya deshecho',
    'is-go': 'no hay excepción que hacer: la respuesta ya es que se puede',
    'too-late': 'anotado hace más de 10 min',
    'built-on': 'hay un registro posterior que depende de él',
    decision: 'las decisiones quedan',
    override: 'una orden contra la decisión queda',
    undo: 'lo deshecho queda',
    correction: 'una corrección queda',
    setting: 'ajustarlo otra vez'
  }
}

function range({ from, to }: Wrong): string {
  if (from !== null && to !== null) return `: de ${from} a ${to}`
  if (from !== null) return `: mínimo ${from}`
  return to === null ? '' : `: máximo ${to}`
}

function stated({ state }: Wrong): string {
  return state === null ? '' : `: ${state}`
}
