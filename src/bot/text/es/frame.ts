import type { Text } from '../text.js'

const local = 'Primero las reglas locales y los profesionales con licencia.'

export const frame: Pick<Text, 'outcomes' | 'outcomesWithin' | 'activities' | 'groups' | 'commands' | 'cautions' | 'frame'> = {
  outcomes: { go: 'SE PUEDE', caution: 'CON CUIDADO', unknown: 'SIN DATO', 'no-go': 'NO SE PUEDE' },
  outcomesWithin: { go: 'se puede', caution: 'con cuidado', unknown: 'sin dato', 'no-go': 'no se puede' },
  activities: { spray: 'rociar', lay: 'colocar láminas', weld: 'soldar', people: 'gente en la cubierta' },
  groups: { conditions: 'condiciones', checklist: 'revisión', people: 'gente' },
  commands: {
    spray: '¿se puede rociar ya? Con lecturas y revisiones',
    air: 'anotar aire y viento: colocar láminas, gente en la cubierta',
    weld: '¿se puede soldar ya? Probetas, cambios, habilitación',
    strip: 'tira cubrejunta: largo, soldadura útil, metros',
    sheets: 'láminas en el techo',
    probe: 'fallas: abrir, reparar, repasar con punzón, lista',
    kit: 'juegos: temperatura, cuándo listos, caducidad, lugar',
    foam: 'prueba de espuma: buena o parar, tiempo abierto',
    laid: 'anotar la superficie colocada y los metros soldados',
    bond: 'cuadro de prueba del día: dónde rompió',
    seal: 'cierre de fin de jornada, desagües, láminas sueltas, y lo que sigue abierto',
    fire: 'vigilancia de fuego tras el último calor',
    detail: 'lista de detalles',
    punch: 'lo que queda pendiente antes de entregar',
    day: 'las horas en que se puede, última lámina, qué preparar',
    site: 'ver o ajustar una obra',
    start: 'preparar una obra en un minuto',
    role: 'quién es supervisor, y nombrar a otro',
    help: 'esta lista, o un comando',
    me: 'su idioma y sus unidades',
    undo: 'deshacer lo que anotó en los últimos 10 min',
    correct: 'poner otros valores en lugar de los de una anotación: las dos quedan en el registro'
  },
  cautions: {
    isocyanates: `Isocianatos: guantes, ojos, protección respiratoria, nadie cerca. ${local}`,
    hotAir: `Aire caliente y cables: quemaduras, descargas, vigilancia de fuego al terminar. ${local}`,
    edges: `Bordes y viento: protección contra caídas, peso en las láminas. ${local}`,
    blade: `Cuchillas y bordes: cortar hacia afuera, protección contra caídas. ${local}`,
    thunder: `Rayos: fuera de la cubierta hasta 30 min después del último trueno. ${local}`,
    heat: `Calor: agua, sombra, descansos, primero los nuevos. ${local}`,
    cold: `Frío: ropa de abrigo, descansos en lugar caliente, cuidarse entre todos. ${local}`,
    ice: `Hielo: resbalones y caídas, no pisar hasta que se vaya. ${local}`,
    hurt: `¿Alguien herido? Paren, ayuden primero y llamen a emergencias. Espuma en los ojos o la piel: enjuagar enseguida con mucha agua. Quemadura: enfriar con agua corriente. Tengan a mano la ficha de datos de seguridad. ${local}`
  },
  frame: {
    quote: (word) => `«${word}»`,
    colon: ': ',
    no: 'no',
    or: 'o',
    more: (count) => `y ${count} más`,
    logged: (ids) => `anotado como ${ids}`,
    notDrawn: (names, ref) => `sin dibujar: ${names}. Lo anotado sigue anotado. Pedir otra vez; si sigue, avisar a quien lleva el bot: ${ref}`,
    undo: (ids) => `deshacer en 10 min (deshacer ${ids})`,
    decision: (id) => `decisión ${id}`,
    attribution: {
      met: 'Datos de MET Norway',
      nws: 'Datos del US National Weather Service',
      'open-meteo': 'Datos meteorológicos de Open-Meteo.com',
      sample: 'Tiempo: semana inventada, demostración'
    },
    from: (source) => `Tiempo de ${source}`,
    issued: (at) => `emitido ${at}`,
    stale: 'con más de 3 h',
    sample: 'semana inventada, demostración',
    invented: 'obra inventada',
    noForecast: 'sin pronóstico para este lugar',
    forecastLacks: (setting) => `sin pronóstico: definir ${setting} (README, Settings)`,
    limits: (id, version) => `hoja de límites ${id} v${version}`
  }
}
