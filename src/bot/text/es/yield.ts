import { counted } from '../plural.js'
import type { YieldWords } from '../yield-words.js'

const count = (kits: number): string => counted('es', kits, { one: 'juego', many: 'de juegos', other: 'juegos' })

export const yields: YieldWords = {
  lot: (lot, real, kits) => `lote ${lot}: ${real} por juego (${count(kits)})`,
  day: (date, real, kits) => `${date}: ${real} por juego (${count(kits)})`,
  off: (amount) => `${amount} respecto a lo previsto`,
  left: (iso, resin) => `queda: iso ${iso}, resina ${resin}`,
  uneven: (name, iso, resin) =>
    `${name} se vacía de forma desigual (quedan iso ${iso}, resina ${resin}): fuera de proporción. Pare, revise mangueras, pistola y las dos partes, cambie la boquilla y haga una prueba`
}
