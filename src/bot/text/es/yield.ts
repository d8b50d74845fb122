import { counted } from '../plural.js'
import type { YieldWords } from '../yield-words.js'
import { atTheTime } from './at-time.js'

const count = (kits: number): string => counted('es', kits, { one: 'juego', many: 'de juegos', other: 'juegos' })

export const yields: YieldWords = {
  lot: (lot, real, kits) => `lote ${lot}: ${real} por juego (${count(kits)})`,
  day: (date, real, kits) => `${date}: ${real} por juego (${count(kits)})`,
  off: (amount, thin) => (thin ? `${amount} más de lo previsto: capa fina` : `${amount} menos de lo previsto: capa gruesa o espuma perdida`),
  left: (iso, resin) => `queda: iso ${iso}, resina ${resin}`,
  uneven: (name, iso, resin) =>
    `${name} se vacía de forma desigual (quedan iso ${iso}, resina ${resin}): fuera de proporción. Pare, revise mangueras, pistola y las dos partes, cambie la boquilla y haga una prueba`,
  used: (area) => `colocado con él: ${area}`,
  next: 'juego siguiente: medirlo y declararlo: kit K2 iso 24 resina 23 mezclado',
  assumed: (name) => `juego ${name} (el que está en uso: no se nombró ninguno)`,
  wasEmpty: (name, at) => `el juego ${name} se declaró vacío ${atTheTime(at)}: se le cuenta de todos modos. ¿Otro juego? Deshacer y nombrarlo`,
  openTimeOfSheet: (amount) => `tiempo abierto ${amount} según la hoja de límites, sin medir`
}
