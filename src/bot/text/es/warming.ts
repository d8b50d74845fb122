import { counted } from '../plural.js'
import type { Text } from '../text.js'
import { theTime } from './at-time.js'

export const warming: Text['warming'] = {
  likely: (at) => `probablemente listo ya hacia ${theTime(at)}`,
  learned: (factor, pairs) =>
    `factor de mezcla ${factor}, aprendido de ${counted('es', pairs, { one: 'par de lecturas', many: 'de pares de lecturas', other: 'pares de lecturas' })}`
}
