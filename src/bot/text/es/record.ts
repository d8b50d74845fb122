import { counted } from '../plural.js'
import type { RecordWords } from '../record-words.js'
import { codes, members } from './record-members.js'

const ofOpen = { one: 'abierta', many: 'de abiertas', other: 'abiertas' }

export const record: RecordWords = {
  title: (site) => `Registro del día, ${site}`,
  packet: (site) => `Expediente de cierre, ${site}`,
  sections: {
    stillOpen: 'Lo que sigue abierto al final del día',
    summary: 'Resumen',
    forecast: 'Tiempo según el pronóstico',
    said: 'Lecturas y declaraciones',
    decisions: 'Decisiones y excepciones',
    kits: 'Juegos y espuma',
    welds: 'Soldadoras y probetas',
    laid: 'Colocado y soldado',
    voids: 'Fallas, reparaciones, sondeos',
    closing: 'Pruebas de adherencia, cierre de fin de jornada, vigilancia de fuego, detalles, lista de pendientes',
    other: 'Otras anotaciones',
    log: 'Todo el registro del día',
    proof: 'Prueba'
  },
  columns: {
    time: 'hora',
    who: 'quién',
    about: 'sobre',
    what: 'qué',
    entry: 'anotación',
    activity: 'trabajo',
    outcome: 'resultado',
    binds: 'lo que manda',
    limits: 'hoja de límites, motor',
    type: 'clase',
    hash: 'hash',
    number: 'falla',
    state: 'estado al final del día',
    where: 'dónde',
    day: 'día',
    logged: 'anotado a las',
    via: 'por',
    data: 'datos',
    notes: 'notas'
  },
  facts: {
    site: 'Obra',
    place: 'Lugar',
    roof: 'Cubierta',
    substrate: 'Soporte',
    zone: 'Huso horario',
    limits: 'Hoja de límites',
    entries: 'Anotaciones',
    area: 'Superficie colocada',
    welded: 'Soldado',
    coupons: 'Probetas',
    voids: 'Fallas',
    decisions: 'Decisiones',
    overrides: 'Excepciones',
    weather: 'Fuente del tiempo',
    anchor: 'Ancla',
    madeAt: 'Hecho',
    days: 'Días'
  },
  types: {
    reading: 'lectura',
    statement: 'declaración',
    kit: 'juego',
    coupon: 'probeta',
    welder: 'soldadora',
    void: 'falla',
    repair: 'reparación',
    probe: 'sondeo',
    laid: 'colocado',
    bond: 'prueba de adherencia',
    seal: 'cierre de fin de jornada',
    decision: 'decisión',
    override: 'excepción',
    correction: 'corrección',
    undo: 'anulación',
    photo: 'foto',
    note: 'nota',
    setting: 'ajuste'
  },
  members,
  codes,
  nothingOpen: 'Nada queda abierto.',
  yes: 'sí',
  no: 'no',
  nothing: 'No se anotó nada.',
  pageWords: ['página', 'de'],
  coupons: (passed, failed, unjudged) =>
    `${counted('es', passed, { one: 'buena', many: 'de buenas', other: 'buenas' })}, ${counted('es', failed, { one: 'fallida', many: 'de fallidas', other: 'fallidas' })}, ${unjudged} sin juzgar`,
  voids: (opened, open, again, passed) =>
    `hoy ${counted('es', opened, ofOpen)} · de todas: ${counted('es', open, ofOpen)}, ${again} por repasar, ${counted('es', passed, { one: 'resuelta', many: 'de resueltas', other: 'resueltas' })}`,
  undone: (entry) => `anulada por ${entry}`,
  corrected: (entry) => `corregida por ${entry}`,
  loggedAt: (time) => `anotada ${time}`,
  override: (outcome, reason) => `excepción a ${outcome}: ${reason}`,
  knownAt: (time) => `Como se sabía a las ${time}, por el pronóstico de la primera decisión del día.`,
  photo: (entry, time) => `Foto ${entry}, ${time}`,
  photoMissing: 'El registro nombra una foto que aquí no se guarda.',
  proof: (anchor) =>
    `Cada anotación lleva el hash de la anterior. El ancla ${anchor} responde por todo el registro hasta ella: con "verify --anchor ${anchor}" quien tenga el registro ve si antes de ella se cambió, quitó o añadió algo.`,
  deferral:
    'Este registro contiene lo que se dijo y se leyó en la cubierta y lo que la hoja de límites hizo de ello. Mandan la ficha del fabricante, el proyectista, las normas locales y el profesional habilitado.',
  alt: (site, date, entries) =>
    `Registro del día de ${site}, ${date}: ${counted('es', entries, { one: 'anotación', other: 'anotaciones' })}, decisiones, probetas, fallas, superficies y el ancla del registro.`,
  altTable: (site, date, rows) => `Registro de ${site}, ${date}, como tabla: ${counted('es', rows, { one: 'fila', other: 'filas' })}.`
}
