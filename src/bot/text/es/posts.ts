import { counted, plural } from '../plural.js'
import type { Text } from '../text.js'
import { theTime } from './at-time.js'
import { still } from './still.js'

export const posts: Pick<Text, 'posts'> = {
  posts: {
    about: (activity, site, date) => `${activity}, ${site}, ${date}`,
    window: (hours, outcome) => `${hours} ${outcome}`,
    ends: (rule) => `después: ${rule}`,
    noWindow: (least) => `ninguna ventana de ${least}`,
    noForecast: 'no hay pronóstico que sirva',
    binds: (finding) => `lo que manda: ${finding}`,
    around: (at) => `hacia ${theTime(at)}`,
    range: (name, low, high) => `${name} de ${low} a ${high}`,
    upTo: (name, high) => `${name} hasta ${high}`,
    beforeWork: (readings) => `Solo según el pronóstico. Antes de trabajar: ${readings}`,
    kitCold: (air, limit) => `Juegos: el aire baja a ${air}, juego mínimo ${limit}: en la caja caliente hasta usarlos`,
    kitHot: (air, limit) => `Juegos: el aire sube a ${air}, juego máximo ${limit}: a la sombra`,
    tomorrow: (head) => `Mañana: ${head}`,
    nextDay: (head) => `Próximo día de trabajo: ${head}`,
    boxNow: 'a la caja caliente ahora',
    wrapUp: (site, date) => `cierre del día, ${site}, ${date}`,
    open: (count) => `${count} sin cerrar`,
    nothingOpen: 'no queda nada abierto',
    nothingLaid: 'hoy no se colocó nada',
    tonight: (list) => `Esta noche: ${list}`,
    rainAmount: (amount) => `lluvia ${amount}`,
    anchor: (anchor) => `registro hasta aquí: ${anchor}`,
    near: { rain: 'ya viene lluvia', gust: 'ya vienen rachas', thunder: 'ya vienen truenos' },
    turned: (activity, is, was) => `${activity}: ${is}, antes ${was}`,
    watch: 'vigilancia del tiempo',
    still,
    notSent: (count) => plural('es', count, { one: `${count} aviso no salió`, other: `${count} avisos no salieron` }),
    whyNotSent: '¿Está Seamhand en el canal, y sigue existiendo el canal? Buscados, y no se envían otra vez.',
    summary: (sites, date) => `${counted('es', sites, { one: 'obra', many: 'de obras', other: 'obras' })}, ${date}`,
    summaryOff: 'Para no recibirlo más: me sin resumen'
  }
}
