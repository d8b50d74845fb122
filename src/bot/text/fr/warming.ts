import { counted } from '../plural.js'
import type { Text } from '../text.js'
import { theTime } from './at-time.js'

export const warming: Text['warming'] = {
  likely: (ready, sure) => `prête au plus tard vers ${theTime(sure)}, sans doute dès ${theTime(ready)}`,
  learned: (factor, pairs) =>
    `facteur de brassage ${factor}, appris de ${counted('fr', pairs, { one: 'paire de mesures', many: 'de paires de mesures', other: 'paires de mesures' })}`
}
