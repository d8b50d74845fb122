import type { ClosingWords } from '../closing-words.js'
import { counted } from '../plural.js'
import { atTheTime, theTime } from './at-time.js'

export const closing: ClosingWords = {
  mend: {
    weld: 'reparar: levantar, limpiar, secar, recalentar, presionar, dejar enfriar',
    patch: (why, length) => `poner parche, no volver a soldar (${why}): ${length} a lo largo de la costura, pasando la falla por todos lados`,
    cutAndPatch: (length) => `cortar la espuma y poner parche: ${length} a lo largo de la costura`,
    why: { char: 'carbonizada', failed: 'falló otra vez tras la reparación', long: 'demasiado larga', foam: 'espuma curada en el traslape' },
    probeAgain: (length) => `después repasar ${length}, pasándola por ambos lados`,
    wantsPatch: (number) => `esta pide parche: decir probe ${number} rechazada, poner el parche y luego probe ${number} reparada parche`,
    waitFirst: (at) => `ESPERAR hasta ${theTime(at)}: repasada en caliente, no cerrar nada todavía`,
    probedWarm: (at) =>
      `todavía no está fría: una soldadura caliente esconde la falla. Repasar otra vez ${atTheTime(at)}; si se abre, anotar una falla nueva`,
    waitUntil: (at) => `todavía no está fría: una soldadura caliente esconde la falla. Esperar hasta ${theTime(at)} y repasar, o decir enfriada`,
    under: (list) => `sigue abierta en el traslape de abajo: falla ${list}; los traslapes se reparan antes de taparlos con tiras y parches`,
    dated: (at) => `con hora ${at}`,
    photos: (count) => counted('es', count, { one: 'foto', many: 'de fotos', other: 'fotos' })
  },
  bond: {
    square: (substrate) => `cuadro de prueba, ${substrate}`,
    none: 'hoy sin cuadro de prueba',
    breaks: { foam: 'espuma en las dos caras', fleece: 'fieltro arrancado', facer: 'revestimiento arrancado', face: 'una cara limpia' },
    force: (amount) => `fuerza ${amount}`,
    stress: (amount) => `${amount} kPa`,
    wanted: (amount) => `exigido ${amount}`
  },
  seal: {
    title: 'cierre de fin de jornada',
    edge: (amount) => `borde abierto ${amount}`,
    noEdge: 'sin borde abierto',
    methods: { tape: 'con cinta', foam: 'con espuma', mastic: 'con masilla', welded: 'soldado', weighed: 'lastrado' },
    by: (who) => `por ${who}`,
    cut: 'cierre de la noche cortado',
    wet: (amount) => `fieltro mojado cortado ${amount}`,
    toCut: (amount) => `hay que cortar el cierre de ayer: ${amount}; cortar el fieltro mojado y decir seal cortado`,
    photos: (count) => counted('es', count, { one: 'foto', many: 'de fotos', other: 'fotos' })
  },
  open: {
    voids: (list) => `fallas por reparar: ${list}`,
    reprobe: (list) => `fallas por repasar: ${list}`,
    nothing: 'no queda nada abierto'
  },
  fire: {
    title: 'terminar la vigilancia de fuego',
    running: (until, left) => `hasta ${theTime(until)}, quedan ${left}`,
    heat: (at) => `último calor ${at}; si hubo después: decir fire calor`,
    noHeat: 'sin calor anotado hoy ni ayer',
    unsigned: (at) => `se cumplió ${atTheTime(at)}: mirar una vez más y decir fire terminado`,
    done: (who) => `vigilado hasta el final${who === null ? '' : ` por ${who}`}`,
    length: (amount) => `duración ${amount}`,
    permit: 'El permiso de trabajo en caliente decide la duración; decirla: fire 2 h'
  },
  detail: {
    title: 'detalles',
    kinds: {
      corners: 'esquinas',
      pipes: 'tubos',
      drains: 'desagües',
      terminations: 'remates',
      cutEdges: 'bordes cortados',
      tSteps: 'escalones en T'
    },
    statuses: { good: 'bien', bad: 'por reparar', none: 'aquí no hay', unknown: 'sin revisar' }
  },
  punch: {
    title: 'lista de pendientes',
    item: (number, text) => `${number}: ${text}`,
    states: { open: 'pendiente', done: 'hecho' },
    counts: (open, done) => `${open} por hacer · ${counted('es', done, { one: 'hecho', many: 'de hechos', other: 'hechos' })}`,
    empty: 'sin pendientes'
  },
  photo: {
    kept: (of) => `Foto guardada: ${of}`,
    day: 'cierre del día',
    punch: (number) => `pendiente ${number}`,
    problems: {
      empty: 'el archivo está vacío',
      'too-large': 'pasa de 8 MB; enviar una más pequeña',
      heic: 'es una foto HEIC; poner la cámara en JPEG (más compatible) o enviarla como JPEG',
      'not-a-photo': 'no es una foto; enviar JPEG o PNG',
      damaged: 'la imagen está dañada; tomarla otra vez',
      away: 'el servicio de chat no la entregó; se puede pedir otra vez',
      'not-found': 'ya no está, o no la puedo ver',
      gone: 'lo que muestra se deshizo'
    },
    notKept: (why) => `La foto no se guardó: ${why}. Lo dicho queda anotado.`,
    alone: 'Una foto sola aún no dice nada: ¿qué muestra?',
    along: (count) => counted('es', count, { one: 'foto va con esto', many: 'de fotos van con esto', other: 'fotos van con esto' })
  },
  since: (state, at) => `${state} desde ${at}`,
  findings: {
    'bond-square': {
      name: 'cuadro de prueba',
      is: {
        go: 'cuadro de prueba bueno',
        caution: 'cuadro de prueba dudoso',
        unknown: 'cuadro de prueba: sin juzgar',
        'no-go': 'cuadro de prueba rechazado'
      }
    },
    'night-seal': {
      name: 'cierre',
      is: { go: 'borde abierto cerrado', caution: 'cierre dudoso', unknown: 'borde abierto: sin declarar', 'no-go': 'borde abierto sin cerrar' }
    },
    'drains-open': {
      name: 'desagües',
      is: { go: 'desagües abiertos', caution: 'desagües dudosos', unknown: 'desagües: sin declarar', 'no-go': 'desagües tapados' }
    },
    'sheets-safe': {
      name: 'láminas sueltas',
      is: { go: 'sin láminas sueltas', caution: 'láminas mal sujetas', unknown: 'láminas sueltas: sin declarar', 'no-go': 'hay láminas sueltas' }
    },
    'fire-watch': {
      name: 'vigilancia de fuego',
      is: {
        go: 'sin vigilancia de fuego en curso',
        caution: 'vigilancia de fuego',
        unknown: 'vigilancia de fuego cumplida, sin firmar',
        'no-go': 'vigilancia de fuego en curso'
      }
    },
    details: {
      name: 'detalles',
      is: { go: 'todos los detalles revisados', caution: 'detalles', unknown: 'detalles: faltan por revisar', 'no-go': 'detalles por reparar' }
    },
    'punch-list': {
      name: 'pendientes',
      is: { go: 'lista de pendientes hecha', caution: 'quedan pendientes', unknown: 'pendientes: no se sabe', 'no-go': 'quedan pendientes' }
    }
  },
  fixes: {
    'test:bond': 'parar, buscar la causa, cortar y pegar de nuevo, luego otro cuadro de prueba',
    'wait:cured': 'dejar curar y luego pelar',
    'state:bond': 'pelar un cuadro de prueba y declarar dónde rompió',
    'seal:edge': 'cerrar el borde abierto y declarar cómo',
    'state:seal': 'declarar el borde abierto y cómo se cierra',
    'open:drains': 'destapar los desagües',
    'state:drains': 'mirar y declarar: desagües abiertos',
    'roll:sheets': 'enrollar o lastrar las láminas sueltas',
    'state:rolled': 'mirar y declarar: enrolladas',
    'watch:fire': 'quedarse y vigilar',
    'state:heat': 'decir el último calor',
    'state:fire': 'mirar una vez más y declarar: fire terminado',
    'mend:detail': 'reparar los detalles que no están bien',
    'state:detail': 'mirar los detalles y declararlos',
    'mend:punch': 'hacer lo que queda pendiente'
  },
  toSay: {
    'state:bond': 'espuma',
    'state:seal': 'LARGO cinta',
    'state:drains': 'desagües abiertos',
    'state:rolled': 'enrolladas',
    'state:heat': 'calor @HORA',
    'state:fire': 'terminado',
    'state:detail': 'esquinas tubos desagües'
  },
  states: { 'no-heat': 'no hay calor anotado', running: 'no se ha cumplido', done: 'hecho', 'open-punch': 'quedan pendientes' },
  buttons: {
    seal: 'Cierre del día',
    fireDone: 'Vigilado hasta el final',
    punch: 'Agregar pendiente',
    detail: 'Revisar detalles',
    photo: 'Pedir la foto otra vez',
    patched: 'Con parche'
  },
  labels: {
    photo: 'foto',
    repair: 'reparación',
    lifted: 'levantada',
    cleaned: 'limpiada',
    dried: 'secada',
    reheated: 'recalentada',
    cooled: 'enfriada',
    broke: 'dónde rompió',
    force: 'fuerza',
    wanted: 'exigido',
    square: 'cuadro',
    cured: 'curado',
    facer: 'revestimiento',
    face: 'cara limpia',
    method: 'método',
    tape: 'cinta',
    mastic: 'masilla',
    welded: 'soldado',
    weighed: 'lastrado',
    drains: 'desagües',
    loose: 'láminas sueltas',
    cutOff: 'cortado',
    heat: 'calor',
    done: 'hecho',
    watch: 'vigilancia',
    corners: 'esquinas',
    pipes: 'tubos',
    terminations: 'remates',
    cutEdges: 'bordes cortados',
    tSteps: 'escalones en T',
    detail: 'detalle',
    punch: 'pendiente',
    fire: 'vigilancia de fuego',
    text: 'texto',
    all: 'todos',
    board: 'placa aislante',
    foil: 'placa con aluminio',
    concrete: 'hormigón',
    steel: 'chapa de acero',
    membrane: 'lámina vieja',
    plywood: 'contrachapado'
  }
}
