import { counted, plural } from '../plural.js'
import type { Text } from '../text.js'
import { ofTheTime, theTime } from './at-time.js'

export const parts: Pick<Text, 'coupon' | 'strip' | 'probe' | 'kit' | 'foam' | 'laid' | 'site' | 'person' | 'help'> = {
  coupon: {
    passed: (welder) => `probeta pasada, ${welder}`,
    failed: (welder) => `probeta fallida, ${welder}`,
    notJudged: (welder) => `probeta sin juzgar, ${welder}`,
    lapsed: (welder) => `habilitación vencida, ${welder}`,
    welder: 'soldadora',
    width: (narrowest, least) => `lo más angosto ${narrowest}${least === null ? '' : `, mínimo ${least}`}`,
    causes: {
      cold: 'fría o sucia: limpiar otra vez, medir la tensión en la herramienta',
      hot: 'demasiado caliente: quemada o brillante',
      uneven: 'desigual: revisar presión, arrugas, humedad, boquilla',
      narrow: 'demasiado angosta: revisar traslape, rumbo, boquilla, rodillo'
    },
    moves: {
      temperature: { up: 'más caliente', down: 'menos caliente' },
      speed: { up: 'más rápido', down: 'más lento' },
      pressure: { up: 'más presión', down: 'menos presión' }
    },
    next: (moves) => `siguiente: ${moves}`,
    oneAtATime: 'uno a la vez',
    cleared: 'habilitada para soldar',
    notCleared: 'no habilitada',
    notClearedBy: (cause) => `no habilitada (${cause})`,
    lapsedBy: {
      failed: 'probeta fallida',
      restart: 'reinicio',
      power: 'corte o cambio de corriente',
      source: 'otra fuente',
      lead: 'otro cable',
      set: 'cambio de ajuste',
      speed: 'cambio de velocidad',
      nozzle: 'cambio de boquilla',
      roller: 'cambio de rodillo',
      operator: 'otro operador',
      off: 'apagado',
      thickness: 'otro espesor',
      lot: 'otro lote',
      colour: 'otro color',
      'old-sheet': 'lámina vieja',
      'half-day': 'nueva media jornada',
      air: 'cambió la temperatura del aire',
      sheet: 'cambió la temperatura de la lámina',
      wind: 'cambió el viento',
      cloud: 'cambió el sol o la nube',
      rain: 'llovió desde entonces'
    },
    onHold: (metres) => `${metres} retenidos: repasar todo con punzón, cortar hasta dos buenas, parchar los cortes`,
    trend: (mean, sigma) => `anchos: media ${mean}, desviación típica ${sigma}`,
    short: (chance) => `probabilidad de que la próxima quede corta ${chance}`
  },
  strip: {
    pieces: (count) => counted('es', count, { one: 'tira cubrejunta', many: 'de tiras cubrejunta', other: 'tiras cubrejunta' }),
    length: (amount) => `largo ${amount}`,
    land: (amount, least) => `soldadura útil a cada lado ${amount}${least === null ? '' : `, mínimo ${least}`}`,
    corners: (radius) => `redondear las esquinas, radio ${radius}`,
    perimeter: (all, robot, hand) => `soldar ${all}: robot ${robot}, a mano ${hand}`,
    each: (all, robot, hand) => `soldar cada una ${all}: robot ${robot}, a mano ${hand}`,
    together: (all, robot, hand) => `soldar en total ${all}: robot ${robot}, a mano ${hand}`,
    fromRoll: (roll, count) => `de un rollo de ${roll}: ${counted('es', count, { one: 'tira', many: 'de tiras', other: 'tiras' })}`,
    rolls: (count) => `hace falta ${counted('es', count, { one: 'rollo', many: 'de rollos', other: 'rollos' })}`
  },
  probe: {
    closeArea: 'cerrar la zona',
    noVoids: 'sin fallas',
    states: { open: 'abierta', repaired: 'reparada, repasar con punzón', passed: 'resuelta' },
    counts: (open, repaired, passed) =>
      `${counted('es', open, { one: 'abierta', many: 'de abiertas', other: 'abiertas' })} · ${repaired} por repasar · ${counted('es', passed, { one: 'resuelta', many: 'de resueltas', other: 'resueltas' })}`,
    number: (n) => `falla ${n}`,
    course: (n) => `hilera ${n}`,
    on: { lap: 'traslape lateral', end: 'junta a tope', strip: 'tira cubrejunta', patch: 'parche' },
    causes: {
      film: 'película',
      parted: 'caras separadas',
      scorched: 'quemado',
      glossy: 'brillante',
      uneven: 'desigual',
      wrinkled: 'arrugado',
      wet: 'mojado',
      dirty: 'sucio',
      cold: 'soldadura fría',
      foam: 'espuma en el traslape'
    },
    at: (distance) => `a ${distance}`,
    long: (length) => `${length} de largo`,
    rate: (per100m, upper) => `${per100m} fallas por 100 m soldados${upper === null ? '' : `, con 90 % de confianza ${upper} como máximo`}`
  },
  kit: {
    name: (kit) => `juego ${kit}`,
    iso: 'iso',
    resin: 'resina',
    parts: (shell, mean, core) => `estimación: pared ${shell} · media ${mean} · centro ${core}`,
    ready: (at) => `listo hacia ${theTime(at)}`,
    cold: (at) => `demasiado frío en la cubierta hacia ${theTime(at)}`,
    startBy: (at) => `a la caja caliente antes ${ofTheTime(at)}`,
    mixed: (at) => `mezclado ${at}`,
    expires: (date) => `caduca ${date}`,
    lot: (lot) => `lote ${lot}`,
    places: { box: 'caja caliente', store: 'almacén', deck: 'cubierta' },
    empty: 'vacío',
    none: 'sin juegos todavía: kit K1 iso 24 resina 23 mezclado'
  },
  foam: {
    verdicts: {
      good: 'espuma buena',
      'iso-rich': 'exceso de iso: oscura o quebradiza',
      'resin-rich': 'exceso de resina: blanda o pegajosa',
      cold: 'fría: lenta, sin subir',
      fast: 'prueba no válida: gelificó demasiado rápido. Revisar los segundos, la temperatura y la proporción del juego, repetir',
      stop: 'parar: vetas o mala proporción'
    },
    openTime: (amount) => `tiempo abierto ${amount}`,
    scale: (times) => `${times} veces el tiempo abierto de la hoja de límites`
  },
  laid: {
    area: (amount) => `colocado ${amount}`,
    welded: (robot, hand) => `soldado: robot ${robot}, a mano ${hand}`,
    yield: (real, plan) => `${real} por juego${plan === null ? '' : `, previsto ${plan}`}`,
    noPlan: 'sin rendimiento por juego todavía',
    drift: (amount, thin) =>
      thin
        ? `${amount} más por juego de lo previsto: capa fina. Revisar abanico, proporción, separación de pasadas, temperatura del juego`
        : `${amount} menos por juego de lo previsto: capa gruesa o espuma perdida. Revisar abanico, proporción, traslape de pasadas, temperatura del juego`
  },
  site: {
    title: (name) => `obra ${name}`,
    sites: 'obras',
    none: 'sin obras todavía: empezar NOMBRE a LAT,LON zona ZONA',
    keys: {
      place: 'lugar',
      zone: 'zona horaria',
      units: 'unidades',
      lang: 'idioma',
      posts: 'avisos',
      morning: 'aviso de la mañana',
      evening: 'aviso de la tarde',
      days: 'días de trabajo',
      hours: 'horas de trabajo',
      limits: 'hoja de límites',
      substrate: 'sustrato',
      channel: 'canal',
      roof: 'techo'
    },
    units: { metric: 'métricas', us: 'de EE. UU.' },
    langs: { en: 'inglés', es: 'español', fr: 'francés' },
    posts: { evening: 'tarde', morning: 'mañana', watch: 'vigilancia', 'wrap-up': 'cierre del día' },
    noPosts: 'ninguno',
    substrates: {
      board: 'placa aislante',
      foil: 'placa con aluminio',
      concrete: 'hormigón',
      steel: 'chapa de acero',
      membrane: 'lámina vieja',
      plywood: 'contrachapado'
    },
    roof: (width, depth, height) => `${width} × ${depth}, ${height} de alto`,
    noChannel: 'ninguno',
    closed: 'obra cerrada'
  },
  person: {
    me: 'sus ajustes',
    asSite: 'como la obra',
    summary: 'resumen cada mañana, un mensaje para todas las obras',
    undone: (ids, count) => `${plural('es', count, { one: 'deshecho', other: 'deshechos' })}: ${ids}`,
    nothingUndone: 'nada que deshacer',
    corrected: (id) => `corregido: ${id}`,
    was: (values) => `antes ${values}`,
    now: (values) => `ahora ${values}`
  },
  help: {
    commands: 'comandos',
    more: 'Escribir ayuda y un comando para ver sus palabras: ayuda spray',
    anyOrder: 'Palabras en cualquier orden, unidades métricas o de EE. UU., palabras de los tres idiomas.',
    usage: (usage) => `escribir: ${usage}`,
    example: (example) => `ejemplo: ${example}`
  }
}
