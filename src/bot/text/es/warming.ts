import { counted } from '../plural.js'
import type { Text } from '../text.js'
import { theTime } from './at-time.js'

export const warming: Text['warming'] = {
  likely: (ready, sure) => `listo a más tardar hacia ${theTime(sure)}, probablemente hacia ${theTime(ready)}`,
  learned: (factor, pairs) =>
    `factor de mezcla ${factor}, aprendido de ${counted('es', pairs, { one: 'par de lecturas', many: 'de pares de lecturas', other: 'pares de lecturas' })}`
}
