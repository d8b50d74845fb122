import { counted } from '../plural.js'
import type { Text } from '../text.js'

export const run: Text['run'] = {
  ways: { stop: 'parar, desenrollar y cubrir', follow: 'desenrollar tras la pistola', flop: 'media lámina doblada hacia atrás' },
  reach: (list) => `alcance: ${list}`,
  noLimit: 'sin límite',
  none: 'La espuma no queda abierta lo bastante para parar y cubrir: desenrollar tras la pistola, o esperar a que el sustrato se enfríe.',
  gels: (stop, gel) => `una parada dura ${stop} y la espuma cuaja en la boquilla a los ${gel}: boquilla nueva tras cada parada`,
  short: (needed, perKit) =>
    `Se acaban las boquillas antes que la espuma: hacen falta unas ${counted('es', needed, { one: 'boquilla', many: 'de boquillas', other: 'boquillas' })} por juego, vienen ${perKit}.`,
  shortest: (openTime, every) => `tiempo abierto más corto ${openTime}: parar y pasar rodillo cada ${every}`
}
